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
    const gone = { 'birds.yaml': 'birds: [{id: x, log: [{date: 2026-01-01, gone: sold}]}]' };
    expect(portrait(gone, 'x').speciesMean).toBeNull();
  });
});
