import { expect, it } from 'vitest';
import { filterStock, type StockFilter } from '../../../src/rules/stock/filter.ts';
import { stock, threeGenerations } from './rooms.ts';

const all = stock(threeGenerations, '2025-06-20').birds;
const none: StockFilter = { species: null, housing: null, age: null, sex: null };
const ids = (filter: Partial<StockFilter>) => filterStock(all, { ...none, ...filter }).map(({ id }) => id);

it('lets everyone through that has all that is asked for', () => {
  expect(ids({})).toHaveLength(11);
  expect(ids({ age: 'fledgling' })).toEqual(['LW-3/1/c1', 'LW-3/1/c2', 'LW-3/1/c3']);
  expect(ids({ sex: 'hen' })).toEqual(['B', 'D', 'GIRL']);
  expect(ids({ sex: 'unknown', age: 'adult' })).toEqual(['LW-1/1/c2', 'LW-2/1/c2']);
  expect(ids({ housing: 'flight 3', sex: 'cock' })).toEqual(['SON']);
  expect(ids({ species: 'zebra finch' })).toEqual([]);
});
