import { expect, it } from 'vitest';
import { rowsInTurn } from '../../../src/report/tables/table.ts';

const table = (length: number) => ({
  name: 'numbers',
  columns: ['n'],
  rows: Array.from({ length }, (_, n) => ({ n })),
});

it('is taken some rows at a time, each once and in order', () => {
  for (const length of [1, 999, 1000, 1001, 2000]) {
    const parts = [...rowsInTurn(table(length))];
    expect(parts.flat()).toEqual(table(length).rows);
    expect(parts.every((part) => part.length > 0 && part.length <= 1000)).toBe(true);
  }
  expect([...rowsInTurn(table(0))]).toEqual([]);
});
