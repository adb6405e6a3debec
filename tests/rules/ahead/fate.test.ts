import { describe, expect, it } from 'vitest';
import { formatDay } from '../../../src/days.ts';
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

/** A chick hatched on that day, and out of the nest since the other. */
function young(start: string, fledged: string | null): Prospect {
  const bird = { fledged: fledged === null ? null : { day: day(fledged) } };
  return {
    profile,
    is: {
      stage: fledged === null ? 'nestling' : 'fledgling',
      bird,
      start: { from: day(start), to: day(start) },
    },
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

  it('is that of a laid one where its clutch is dealt so many', () => {
    expect(fateOf(egg({ toCome: 4 }), deal, chances(0.4, 0.4, 0.4, 0.4), on).hatched).toBe(day('2026-03-16'));
  });

  it('begins on any of the days on which the sitting may have begun, each as likely', () => {
    const unsure = egg({ start: { from: day('2026-03-04'), to: day('2026-03-07') } });
    const hatched = [0, 0.2, 0.25, 0.5, 0.75, 0.99].map(
      (start) => fateOf(unsure, { ...deal, start }, chances(0.4, 0.4, 0.4, 0.4), on).hatched,
    );
    expect(hatched.map(formatDay)).toEqual([
      '2026-03-16',
      '2026-03-16',
      '2026-03-17',
      '2026-03-18',
      '2026-03-19',
      '2026-03-19',
    ]);
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

describe('the fate of a nestling in one future', () => {
  // Hatched on 4 March and 6 days old: 12 of 18 days in the nest are before it, survived with 0.5 ^ (12/18) = 0.63.
  const nestling = (start = '2026-03-04') => young(start, null);
  const fate = (nest: number, after = 0.4, one = nestling(), more: Partial<Deal> = {}) =>
    fateOf(one, { ...deal, ...more }, chances(0, 0, nest, after), on);

  it('is not to hatch again, but to leave the nest and to feed itself at the ages dealt', () => {
    expect(fate(0.4)).toEqual({
      possible: true,
      hatched: NEVER,
      ringable: day('2026-03-04'),
      fledged: day('2026-03-22'),
      independent: day('2026-04-05'),
    });
  });

  it('is surer than that of an egg by the days that it has lived', () => {
    expect([0.62, 0.64].map((nest) => fate(nest).fledged)).toEqual([day('2026-03-22'), NEVER]);
    // Only 1 of 18 days is left to a chick of 17 days: 0.5 ^ (1/18) = 0.96.
    const old = nestling('2026-02-21');
    expect([0.95, 0.97].map((nest) => fate(nest, 0.4, old).fledged)).toEqual([day('2026-03-11'), NEVER]);
  });

  it('is sure once it should have left the nest, whatever its clutch’s luck', () => {
    expect(fate(0.999, 0.4, nestling('2026-02-15'))).toMatchObject({
      ringable: day('2026-02-15'),
      fledged: day('2026-03-05'),
      independent: day('2026-03-19'),
    });
  });

  // Rings go on from the age of 7 days in the profile; who is to be looked at on the day before must have lived so long.
  it('is sure where no chick of its clutch is to die', () => {
    const sure = { luck: { ...deal.luck, fledge: 1 } };
    expect(fate(0.999, 0.4, nestling(), sure).fledged).toBe(day('2026-03-22'));
  });

  it('is no ring where it dies before the age of ringing, one where it dies after it', () => {
    // 2 days old, 16 before it, drawn 0.8 and 0.9: 2 + 16 · ln 0.8 / ln 0.54 = 7.8 d and 4.7 d.
    const small = nestling('2026-03-08');
    expect([0.8, 0.9].map((nest) => fate(nest, 0.4, small).ringable)).toEqual([day('2026-03-08'), NEVER]);
    expect(fate(0.8, 0.4, small).fledged).toBe(NEVER);
  });

  it('is to leave the nest without ever feeding itself where it dies in the weeks after it', () => {
    expect(fate(0.4, 0.6)).toMatchObject({ fledged: day('2026-03-22'), independent: NEVER });
  });

  it('is that of a newly hatched one where it is said to hatch only tomorrow', () => {
    const tomorrow = nestling('2026-03-11');
    expect([0.49, 0.51].map((nest) => fate(nest, 0.4, tomorrow).fledged)).toEqual([day('2026-03-29'), NEVER]);
  });

  it('takes a day in the nest and one of being fed at the least', () => {
    expect(fate(0.4, 0.4, nestling('2026-03-10'), { fledging: -2, independence: -5 })).toMatchObject({
      fledged: day('2026-03-11'),
      independent: day('2026-03-12'),
    });
  });
});

describe('the fate of a fledgling in one future', () => {
  // Out on 3 March at 20 days; at 32 days it feeds itself: 12 days after the nest, of which 7 are behind it on 10 March.
  const fledgling = (out = '2026-03-03', start = '2026-02-11') => young(start, out);
  const fate = (after: number, one = fledgling()) => fateOf(one, deal, chances(0, 0, 0, after), on);

  it('is to feed itself at its age, and nothing else', () => {
    expect(fate(0.4)).toEqual({
      possible: true,
      hatched: NEVER,
      ringable: NEVER,
      fledged: NEVER,
      independent: day('2026-03-15'),
    });
  });

  it('is the surer the longer it has been out: 0.5 ^ (5/12) = 0.75 where 5 of 12 days are left', () => {
    expect([0.74, 0.76].map((after) => fate(after).independent)).toEqual([day('2026-03-15'), NEVER]);
    const yesterday = fledgling('2026-03-09', '2026-02-17');
    expect([0.52, 0.54].map((after) => fate(after, yesterday).independent)).toEqual([
      day('2026-03-21'),
      NEVER,
    ]);
  });

  it('is sure once it is past the age, whatever its clutch’s luck', () => {
    expect(fate(0.999, fledgling('2026-02-14', '2026-01-25')).independent).toBe(day('2026-02-26'));
  });

  it('that was seen to leave the nest on the day it hatched was in it for a day', () => {
    expect(fate(0.4, fledgling('2026-03-03', '2026-03-03')).independent).toBe(day('2026-04-04'));
  });
});

describe('the age of ringing', () => {
  it('begins a day before the profile’s, and is 5–10 d where there is none (common practice)', () => {
    expect(ringAge(null)).toEqual({ low: 4, high: 10 });
    expect(ringAge(findSpecies('lavender waxbill', []))).toEqual({ low: 6, high: 8 });
  });
});
