import { describe, expect, it } from 'vitest';
import { formatDay } from '../../../src/days.ts';
import { portraitOf } from '../../../src/rules/stock/portrait.ts';
import type { Files } from '../../rooms.ts';
import { birdIn, stock, threeGenerations } from './rooms.ts';

function portrait(files: Files, name: string, on = '2026-06-01') {
  const all = stock(files, on);
  return portraitOf(birdIn(all, name), all);
}

describe('what is known of a bird', () => {
  it('how many of its ancestors, generation by generation', () => {
    expect(portrait(threeGenerations, 'LW-3/1/c1').known).toEqual([
      { known: 2, of: 2 },
      { known: 4, of: 4 },
      { known: 0, of: 8 },
      { known: 0, of: 16 },
    ]);
  });

  it('where it hatched, and who else fed it', () => {
    expect(portrait(threeGenerations, 'SON').origin).toEqual({ clutch: 'LW-1/1', egg: 'e1', rearedBy: [] });
    expect(portrait(threeGenerations, 'A').origin).toBeNull();
  });

  it('the pair that reared it, where that was another', () => {
    const files = {
      'LW-1':
        'pair: LW-1\nspecies: lavender waxbill\nlog:\n  - {date: 2026-03-01, laid: 1, clutch: 1}\n  - {date: 2026-03-14, hatched: 1}\n  - {date: 2026-03-16, fostered: {LW-2: c1}}\n  - {date: 2026-03-20, moved: {c1: cage 2}}',
      'LW-2': 'pair: LW-2\nspecies: lavender waxbill\nlog:\n  - {date: 2026-02-01, paired}',
    };
    expect(portrait(files, 'LW-1/1/c1').origin).toEqual({ clutch: 'LW-1/1', egg: 'e1', rearedBy: ['LW-2'] });
  });

  it('of several that may have been its mate, nobody in particular', () => {
    const files = {
      'birds.yaml': 'birds: [{id: A, sex: cock}, {id: B, sex: hen}, {id: C, sex: hen}]',
      'LW-1': 'pair: LW-1\ncock: A\nhen: [B, C]\nlog:\n  - {date: 2026-02-01, paired}',
      'LW-2':
        'pair: LW-2\ncock: A\nhen: Z\nlog:\n  - {date: 2026-01-01, paired}\n  - {date: 2026-01-20, parted}',
    };
    expect(portrait(files, 'A').mates.map(({ id, times }) => [id, times.map((time) => time.pair)])).toEqual([
      ['Z', ['LW-2']],
      [null, ['LW-1']],
    ]);
  });

  it('its mates, when they were together, and the young they had', () => {
    const [mate, ...others] = portrait(threeGenerations, 'A').mates;
    expect(others).toEqual([]);
    expect(mate?.id).toBe('B');
    expect(
      mate?.times.map(({ pair, from, to }) => [pair, formatDay(from), to === null ? null : formatDay(to)]),
    ).toEqual([['LW-1', '2024-03-01', '2024-06-01']]);
    expect(mate?.young.map(({ id }) => id)).toEqual(['LW-1/1/c2', 'SON']);
  });

  it('young with a mate that is not certain stand by themselves, last', () => {
    const files = {
      'birds.yaml': 'birds: [{id: d, sex: hen}, {id: x, dam: d, sire: [a, b]}, {id: y, dam: d, sire: a}]',
    };
    expect(portrait(files, 'd').mates.map(({ id, young }) => [id, young.map((one) => one.id)])).toEqual([
      ['a', ['y']],
      [null, ['x']],
    ]);
  });
});

describe('inbreeding', () => {
  it('is told with the ancestors that cause it, and what its parents are to each other', () => {
    const files = {
      'birds.yaml': 'birds: [{id: x, sire: a, dam: b}, {id: a, sire: G, dam: M}, {id: b, sire: G, dam: N}]',
    };
    expect(portrait(files, 'x')).toMatchObject({
      through: [{ founder: 'G', share: 1 / 8 }],
      kin: 'half brother and sister',
    });
  });

  it('of nothing is nothing', () => {
    expect(portrait(threeGenerations, 'LW-3/1/c1', '2025-06-20')).toMatchObject({ through: [], kin: null });
  });

  it('mean kinship is told beside the mean of the species; of those that are here only', () => {
    expect(portrait(threeGenerations, 'A', '2024-02-10').speciesMean).toBeCloseTo(1 / 8, 12);
    // Of its own species alone.
    const two = {
      'birds.yaml':
        'birds: [{id: x, species: canary}, {id: y, species: zebra finch, sire: s}, {id: z, species: zebra finch, sire: s}]',
    };
    expect(portrait(two, 'x').speciesMean).toBe(1 / 2);
    const gone = { 'birds.yaml': 'birds: [{id: x, log: [{date: 2026-01-01, gone: sold}]}]' };
    expect(portrait(gone, 'x').speciesMean).toBeNull();
  });
});
