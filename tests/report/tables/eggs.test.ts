import { expect, it } from 'vitest';
import { eggColumns, eggTable } from '../../../src/report/tables/eggs.ts';
import { eggEntries } from '../../../src/rules/season/ledger.ts';
import { room } from '../../rooms.ts';
import { known, ON } from '../seasons.ts';

const { name, columns, rows: all } = eggTable(eggEntries(room(known, ON)));
const rows = [...all];

it('has a row for each egg, with documented columns', () => {
  expect([name, rows.length, new Set(columns).size]).toEqual(['eggs', 19, eggColumns.length]);
  for (const { doc } of eggColumns) expect(doc).toMatch(/\w/);
});

it('tells the egg that was given away', () => {
  expect(rows.find(({ egg }) => egg === 'LW-1/2/e3')).toEqual({
    egg: 'LW-1/2/e3',
    pair: 'LW-1',
    clutch: 'LW-1/2',
    season: '2026',
    species: 'lavender waxbill',
    laidFrom: '2026-05-12',
    laid: '2026-05-12',
    seenLaid: 'yes',
    fertility: 'fertile',
    sitter: 'LW-2',
    fate: 'hatched',
    cause: null,
    endedFrom: '2026-05-24',
    ended: '2026-05-25',
    chick: 'LW-1/2/c2',
    length: null,
    breadth: null,
  });
  expect(rows.find(({ egg }) => egg === 'LW-2/1/e2')).toMatchObject({ fate: 'taken', cause: 'sold' });
  expect(rows.find(({ egg }) => egg === 'LW-4/1/e1')).toMatchObject({ seenLaid: 'no' });
});
