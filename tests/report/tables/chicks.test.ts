import { expect, it } from 'vitest';
import { chickColumns, chickTable } from '../../../src/report/tables/chicks.ts';
import { chickEntries } from '../../../src/rules/season/ledger.ts';
import { room } from '../../rooms.ts';
import { known, ON } from '../seasons.ts';

const { name, columns, rows: all } = chickTable(chickEntries(room(known, ON)));
const rows = [...all];

it('has a row for each chick, with documented columns', () => {
  expect([name, rows.length, new Set(columns).size]).toEqual(['chicks', 8, chickColumns.length]);
  for (const { doc } of chickColumns) expect(doc).toMatch(/\w/);
});

it('tells who fed it and what became of it', () => {
  expect(rows.find(({ chick }) => chick === 'LW-1/2/c2')).toMatchObject({
    pair: 'LW-1',
    egg: 'e3',
    hatched: '2026-05-25',
    fedBy: 'LW-2',
    fledged: '2026-06-14',
    fedLastBy: 'LW-2',
    independent: null,
    youth: 'died',
    left: '2026-06-20',
    how: 'window',
    counted: 'yes',
  });
  expect(rows.find(({ chick }) => chick === 'LW-4/1/c1')).toMatchObject({ youth: 'gone', how: 'sold' });
});
