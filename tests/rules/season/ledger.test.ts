import { describe, expect, it } from 'vitest';
import { chickEntries, clutchEntries, eggEntries, rateEntries } from '../../../src/rules/season/ledger.ts';
import { room as files, ON } from '../../published/known-season.ts';
import { room } from '../../rooms.ts';
import { FOUR, pair } from './rooms.ts';

/** The ledger of a season that is known in full. */
function ledger() {
  const known = room(files, ON);
  return { eggs: eggEntries(known), chicks: chickEntries(known), clutches: clutchEntries(known) };
}

describe('the ledger', () => {
  it('has every egg, chick and clutch once', () => {
    const { eggs, chicks, clutches } = ledger();
    expect([eggs.length, chicks.length, clutches.length]).toEqual([19, 8, 5]);
    expect(new Set(eggs.map(({ egg }) => egg)).size).toBe(19);
  });

  it('says of each what is derived', () => {
    const { eggs, chicks, clutches } = ledger();
    const given = eggs.find(
      ({ egg }) => egg.clutch.pair.id === 'LW-1' && egg.clutch.number === 2 && egg.ref === 'e3',
    );
    expect(given).toMatchObject({ season: '2026', fertility: 'fertile', sitter: 'LW-2' });
    expect(chicks.find(({ bird }) => bird.egg === given?.egg)).toMatchObject({
      fate: 'died',
      nestFeeder: 'LW-2',
      lastFeeder: 'LW-2',
    });
    expect(clutches.map(({ chicksKnown }) => chicksKnown)).toEqual([true, true, true, true, true]);
  });
});

it('rates stand for all seasons and each, for the room, its species and its pairs', () => {
  const rows = rateEntries(room(files, ON));
  // Two seasons' worth (all, 2026) of one room, one species and four pairs, six rates each.
  expect(rows).toHaveLength(2 * 6 * 6);
  const fertility = rows.find(
    ({ season, by, rate }) => season === '2026' && by === 'all' && rate === 'fertility',
  );
  expect(fertility).toMatchObject({ group: null, figures: { k: 8, n: 12, outside: 5 } });
});

it('rates are told for all seasons first, then season by season, whichever journal is read first', () => {
  const year = (of: string) => FOUR.replaceAll('2026-', `${of}-`);
  const two = {
    'LW-1': pair('LW-1', 'lavender waxbill', year('2026')),
    'LW-2': pair('LW-2', 'zebra finch', `${year('2024')}\n${year('2025')}`),
  };
  const rows = rateEntries(room(two, '2026-07-01')).filter(({ rate }) => rate === 'fertility');
  expect(rows.map(({ season, by, group }) => `${season} ${by} ${group}`)).toEqual([
    'all all null',
    'all species lavender waxbill',
    'all species zebra finch',
    'all pair LW-1',
    'all pair LW-2',
    '2024 all null',
    '2024 species zebra finch',
    '2024 pair LW-2',
    '2025 all null',
    '2025 species zebra finch',
    '2025 pair LW-2',
    '2026 all null',
    '2026 species lavender waxbill',
    '2026 pair LW-1',
  ]);
});

it('what nobody sat on or fed has nobody in the ledger', () => {
  const apart = {
    'LW-1': pair(
      'LW-1',
      'lavender waxbill',
      `${FOUR}\n date: 2026-03-05, set: {incubator: e1}\n date: 2026-03-16, hatched: [e2, e3]\n date: 2026-03-18, fostered: {hand: c1}`,
    ),
  };
  const known = room(apart, '2026-03-20');
  expect(eggEntries(known).map(({ egg, sitter }) => [egg.ref, sitter])).toEqual([
    ['e1', null],
    ['e2', 'LW-1'],
    ['e3', 'LW-1'],
    ['e4', 'LW-1'],
  ]);
  expect(
    chickEntries(known).map(({ bird, nestFeeder, lastFeeder }) => [bird.ref, nestFeeder, lastFeeder]),
  ).toEqual([
    ['c1', null, null],
    ['c2', 'LW-1', 'LW-1'],
  ]);
});
