import { expect, it } from 'vitest';
import { clutchColumns, clutchTable } from '../../../src/report/tables/clutches.ts';
import { clutchEntries } from '../../../src/rules/season/ledger.ts';
import { room } from '../../rooms.ts';
import { known, ON } from '../seasons.ts';

const { name, columns, rows: all } = clutchTable(clutchEntries(room(known, ON)));
const rows = [...all];

it('has a row for each clutch, with documented columns', () => {
  expect([name, rows.length, new Set(columns).size]).toEqual(['clutches', 5, clutchColumns.length]);
  for (const { doc } of clutchColumns) expect(doc).toMatch(/\w/);
});

it('tells its counts', () => {
  expect(rows[0]).toMatchObject({
    clutch: 'LW-1/1',
    cock: 'C-LW-1',
    hen: 'H-LW-1',
    begun: '2026-03-01',
    counted: 'yes',
    laid: 5,
    fertile: 4,
    clear: 1,
    lost: 2,
    hatched: 3,
    independent: 2,
    died: 1,
  });
  expect(rows.at(-1)).toMatchObject({
    clutch: 'LW-4/1',
    counted: 'no',
    chicksCounted: 'yes',
    begun: '2026-03-30',
  });
});
