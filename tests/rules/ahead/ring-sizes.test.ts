import { describe, expect, it } from 'vitest';
import { four, NESTLINGS, only, rings } from './drawer.ts';
import { layingPair } from './futures.ts';

describe('the size', () => {
  const species = (name: string) => ({ A: layingPair('A', 4, NESTLINGS).replace('zebra finch', name) });

  it('is one in hand that the profile allows, the nearest to its middle', () => {
    const inHand = 'rings: [{mm: 2.5, in-hand: 1}, {mm: 2.7, in-hand: 1}, {mm: 3.0, in-hand: 9}]\n';
    expect(only(rings(four, '2026-03-15', inHand)).mm).toBe(2.7);
  });

  it('is the nearer of two in hand, in whichever order they are written', () => {
    for (const inHand of [
      '{mm: 2.8, in-hand: 1}, {mm: 2.6, in-hand: 1}',
      '{mm: 2.6, in-hand: 1}, {mm: 2.8, in-hand: 1}',
    ])
      expect(only(rings(four, '2026-03-15', `rings: [${inHand}]\n`)).mm).toBe(2.6);
  });

  it('is the larger of two in hand that lie equally near: a ring must never be tight', () => {
    for (const inHand of [
      '{mm: 2.5, in-hand: 1}, {mm: 2.8, in-hand: 1}',
      '{mm: 2.8, in-hand: 1}, {mm: 2.5, in-hand: 1}',
    ])
      expect(only(rings(four, '2026-03-15', `rings: [${inHand}]\n`)).mm).toBe(2.8);
    // 2.65 is the middle of 2.5–2.8; to a machine 2.6 lies nearer to it by less than a millionth of a millionth.
    const tenth = 'rings: [{mm: 2.6, in-hand: 1}, {mm: 2.7, in-hand: 1}]\n';
    expect(only(rings(four, '2026-03-15', tenth)).mm).toBe(2.7);
  });

  it('is the largest that a narrow profile allows where no tenth lies within: neither tighter nor wider', () => {
    const sizeOf = (range: string) =>
      only(
        rings(
          { 'species/moonfinch.yaml': `species: moonfinch\nring-size: ${range}\n`, ...species('moonfinch') },
          '2026-03-15',
        ),
      ).mm;
    expect(['2.42-2.44', '2.45-2.48', '2.38-2.44'].map(sizeOf)).toEqual([2.44, 2.48, 2.4]);
  });

  it('is the middle of the profile, to a tenth and rather too large, where none is in hand', () => {
    expect(only(rings(four, '2026-03-15')).mm).toBe(2.7);
    expect(only(rings(species('lavender waxbill'), '2026-03-15')).mm).toBe(2.2);
  });

  it('is one for species whose profiles both allow it', () => {
    const both = { ...four, B: layingPair('B', 4, NESTLINGS).replace('zebra finch', 'Gouldian finch') };
    const size = only(rings(both, '2026-03-15'));
    expect(size.mm).toBe(2.6);
    expect(size.species.map((one) => one.species).sort()).toEqual(['Gouldian finch', 'zebra finch']);
  });

  it('is chosen for the narrowest profile first, as others may wear its ring', () => {
    const files = {
      'species/a.yaml': 'species: broad moonfinch\nring-size: 2.3-2.9\n',
      'species/b.yaml': 'species: narrow moonfinch\nring-size: 2.7-2.8\n',
      A: layingPair('A', 4, NESTLINGS).replace('zebra finch', 'broad moonfinch'),
      B: layingPair('B', 4, NESTLINGS).replace('zebra finch', 'narrow moonfinch'),
    };
    expect(only(rings(files, '2026-03-15')).mm).toBe(2.8);
  });

  it('is one in hand that the profile allows, whatever size another species gets', () => {
    // Star finch 2.3–2.5 mm, yellow-winged pytilia 2.4–2.5 mm (shipped profiles).
    const both = {
      A: layingPair('A', 4, NESTLINGS).replace('zebra finch', 'star finch'),
      B: layingPair('B', 4, NESTLINGS).replace('zebra finch', 'yellow-winged pytilia'),
    };
    const { sizes, unused } = rings(both, '2026-03-15', 'rings: [{mm: 2.3, in-hand: 2}]\nring-lead: 2\n');
    expect(sizes.map(({ mm, inHand, species: [one] }) => [mm, inHand, one?.species])).toEqual([
      [2.3, 2, 'star finch'],
      [2.5, 0, 'yellow-winged pytilia'],
    ]);
    expect(unused).toEqual([]);
  });

  it('stays what it was when the last one is used: ordered is the size that the keeper has, not the middle', () => {
    const sizeOf = (drawer: string) => only(rings(four, '2026-03-15', `rings: [${drawer}]\n`)).mm;
    expect(sizeOf('{mm: 2.5, in-hand: 1}')).toBe(2.5);
    expect(sizeOf('{mm: 2.5, in-hand: 0}')).toBe(2.5);
    // What lies in the drawer goes first.
    expect(sizeOf('{mm: 2.6, in-hand: 0}, {mm: 2.8, in-hand: 1}')).toBe(2.8);
  });

  it('is not known of a species without a profile', () => {
    expect(only(rings(species('lesser moonfinch'), '2026-03-15'))).toMatchObject({
      mm: null,
      inHand: 0,
      species: [{ species: 'lesser moonfinch', size: null }],
    });
  });

  it('is not known of a species whose profile does not say it; nothing is spare for it', () => {
    const files = { 'species/own.yaml': 'species: moonfinch\nfledging: 18-20\n', ...species('moonfinch') };
    const { sizes } = rings(files, '2026-03-15', 'rings: [{mm: 2.7, in-hand: 9}]\n');
    expect(sizes).toMatchObject([
      { mm: null, chicks: 4, species: [{ species: 'moonfinch', size: null }], spare: [] },
    ]);
  });

  it('of two species without a profile is the same unknown; it comes last, the smallest first', () => {
    const kept = (id: string, name: string) => ({
      [id]: layingPair(id, 4, NESTLINGS).replace('zebra finch', name),
    });
    const files = {
      ...kept('A', 'lesser moonfinch'),
      ...kept('B', 'zebra finch'),
      ...kept('C', 'lavender waxbill'),
      ...kept('D', 'greater moonfinch'),
    };
    const { sizes } = rings(files, '2026-03-15', 'rings: [{mm: 2.7, in-hand: 9}]\n');
    expect(sizes.map(({ mm, chicks, spare }) => [mm, chicks, spare])).toEqual([
      [2.2, 4, []],
      [2.7, 4, []],
      [null, 8, []],
    ]);
  });
});
