import { describe, expect, it } from 'vitest';
import type { Deal } from '../../../src/rules/ahead/deal.ts';
import { fateOf, NEVER, ringAge } from '../../../src/rules/ahead/fate.ts';
import type { Prospect } from '../../../src/rules/ahead/prospects.ts';
import { findSpecies } from '../../../src/species/find.ts';
import type { Random } from '../../../src/statistics/random.ts';
import { day } from '../../rooms.ts';

/** Chance that gives these numbers in turn. */
function chances(...numbers: number[]): Random {
  return { uniform: () => numbers.shift() ?? 0, normal: () => 0, beta: () => 0 } as unknown as Random;
}

/** A clutch of four that is sat on 12 d, stays 18 d in the nest and feeds itself at 32 d; half come through each step. */
const deal: Deal = {
  luck: { fertility: 0.5, hatchOfFertile: 0.5, fledge: 0.5, independence: 0.5 },
  eggs: 4,
  start: 0,
  incubation: 12,
  fledging: 18,
  independence: 32,
};

const on = day('2026-03-10');
const profile = findSpecies('zebra finch', []);

function egg(more: Partial<Extract<Prospect['is'], { stage: 'egg' }>> = {}): Prospect {
  const start = { from: day('2026-03-04'), to: day('2026-03-04') };
  return {
    profile,
    is: { stage: 'egg', start, fertile: false, seen: on, toCome: null, ...more },
  } as Prospect;
}

describe('the fate of an egg in one future', () => {
  it('is to hatch, to leave the nest and to feed itself when it comes through all', () => {
    expect(fateOf(egg(), deal, chances(0.4, 0.4, 0.4, 0.4), on)).toEqual({
      possible: true,
      hatched: day('2026-03-16'),
      ringable: day('2026-03-16'),
      fledged: day('2026-04-03'),
      independent: day('2026-04-17'),
    });
  });

  it('is nothing when it is infertile, unless the lamp has shown otherwise', () => {
    expect(fateOf(egg(), deal, chances(0.6, 0.4, 0.4, 0.4), on).hatched).toBe(NEVER);
    expect(fateOf(egg({ fertile: true }), deal, chances(0.6, 0.4, 0.4, 0.4), on).hatched).toBe(
      day('2026-03-16'),
    );
  });

  it('is nothing when it dies in the shell, or is never laid', () => {
    expect(fateOf(egg(), deal, chances(0.4, 0.6, 0.4, 0.4), on).hatched).toBe(NEVER);
    expect(fateOf(egg({ toCome: 5 }), deal, chances(0.4, 0.4, 0.4, 0.4), on).hatched).toBe(NEVER);
  });

  it('cannot be to have hatched before the look that still found it whole', () => {
    const late = egg({ seen: day('2026-03-16') });
    expect(fateOf(late, deal, chances(0.4, 0.4, 0.4, 0.4), on)).toMatchObject({
      possible: false,
      hatched: NEVER,
    });
  });

  it('is a chick that dies in the nest at an even daily risk: at 0.5 through 18 d, drawn 0.8, within 6 d', () => {
    // 18 · ln 0.8 / ln 0.5 = 5.8 d (Mayfield 1975: an even daily risk).
    const died = fateOf(egg(), deal, chances(0.4, 0.4, 0.8, 0.4), on);
    const ring = ringAge(profile).low;
    expect([died.fledged, died.ringable === NEVER]).toEqual([NEVER, ring >= 5.8]);
  });
});

describe('the age of ringing', () => {
  it('begins a day before the profile’s, and is 5–10 d where there is none (common practice)', () => {
    expect(ringAge(null)).toEqual({ low: 4, high: 10 });
    expect(ringAge(findSpecies('lavender waxbill', []))).toEqual({ low: 6, high: 8 });
  });
});
