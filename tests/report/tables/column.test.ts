import { expect, it } from 'vitest';
import { dayCell, tableOf } from '../../../src/report/tables/column.ts';
import { day } from '../../rooms.ts';

it('a table has each of its columns in each row', () => {
  const columns = [
    { name: 'n', doc: '', value: (n: number) => n },
    { name: 'half', doc: '', value: (n: number) => (n % 2 === 0 ? n / 2 : null) },
  ];
  const { name, columns: names, rows } = tableOf('numbers', columns, [2, 3]);
  expect([name, names, rows.length]).toEqual(['numbers', ['n', 'half'], 2]);
  const wanted = [
    { n: 2, half: 1 },
    { n: 3, half: null },
  ];
  // As often as wanted: a data package counts them, and then writes them.
  expect([...rows]).toEqual(wanted);
  expect([...rows]).toEqual(wanted);
});

it('rows that are made at each walk are counted by it', () => {
  let walks = 0;
  const ones = {
    *[Symbol.iterator]() {
      walks++;
      yield* [2, 3, 5];
    },
  };
  const table = () => tableOf('numbers', [{ name: 'n', doc: '', value: (n: number) => n }], ones);
  expect(table().rows.length).toBe(3);
  walks = 0;
  const { rows } = table();
  expect([[...rows].length, rows.length, walks]).toEqual([3, 3, 1]);
});

it('a day is written as ISO 8601 has it, or is nothing', () => {
  expect([dayCell(day('2026-03-01')), dayCell(null), dayCell(undefined)]).toEqual(['2026-03-01', null, null]);
});
