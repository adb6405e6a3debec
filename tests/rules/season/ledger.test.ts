import { describe, expect, it } from 'vitest';
import { chickEntries, clutchEntries, eggEntries, rateEntries } from '../../../src/rules/season/ledger.ts';
import { room as files, ON } from '../../published/known-season.ts';
import { room } from '../../rooms.ts';

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
