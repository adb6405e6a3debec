import { expect, it } from 'vitest';
import { dayCell, tableOf } from '../../../src/report/tables/column.ts';
import { day } from '../../rooms.ts';

it('a table has each of its columns in each row', () => {
  const columns = [
    { name: 'n', doc: '', value: (n: number) => n },
    { name: 'half', doc: '', value: (n: number) => (n % 2 === 0 ? n / 2 : null) },
  ];
  expect(tableOf('numbers', columns, [2, 3])).toEqual({
    name: 'numbers',
    columns: ['n', 'half'],
    rows: [
      { n: 2, half: 1 },
      { n: 3, half: null },
    ],
  });
});

it('a day is written as ISO 8601 has it, or is nothing', () => {
  expect([dayCell(day('2026-03-01')), dayCell(null), dayCell(undefined)]).toEqual(['2026-03-01', null, null]);
});
