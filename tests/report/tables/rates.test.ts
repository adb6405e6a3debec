import { expect, it } from 'vitest';
import { rateColumns, rateTable } from '../../../src/report/tables/rates.ts';
import { rateEntries } from '../../../src/rules/season/ledger.ts';
import { room } from '../../rooms.ts';
import { known, ON } from '../seasons.ts';

const { name, columns, rows: all } = rateTable(rateEntries(room(known, ON)));
const rows = [...all];

it('has a row for each rate of each group and season, with documented columns', () => {
  expect([name, rows.length, new Set(columns).size]).toEqual(['rates', 72, rateColumns.length]);
  for (const { doc } of rateColumns) expect(doc).toMatch(/\w/);
});

it('tells counts, share and interval, and nothing where there is no n', () => {
  const row = (season: string, by: string, group: string | null, rate: string) =>
    rows.find((one) => one.season === season && one.by === by && one.group === group && one.rate === rate);
  expect(row('all', 'all', null, 'fertility')).toMatchObject({
    k: 8,
    n: 12,
    open: 0,
    outside: 5,
    share: 8 / 12,
    designEffect: 1,
  });
  expect(row('2026', 'pair', 'LW-2', 'fertility')).toMatchObject({
    k: 0,
    n: 0,
    share: null,
    low: null,
    high: null,
    designEffect: null,
  });
});
