import { describe, expect, it } from 'vitest';
import {
  adultNeed,
  freeLiving,
  nestlingDays,
  nestlingNeed,
  nestlingPeak,
  nestlingTotal,
} from '../../../src/rules/feed/energy.ts';
import { factsOf } from '../../../src/rules/feed/facts.ts';
import { findSpecies } from '../../../src/species/find.ts';
import { logisticAt, logisticThrough } from '../../../src/statistics/logistic.ts';

describe('a nestling’s days', () => {
  const reckoned = (species = 'lavender waxbill') => {
    const { massAt, mass, fledging } = factsOf()(findSpecies(species, []));
    return { mass, fledging, days: nestlingDays(mass, fledging, massAt) };
  };

  it('are as many as it spends in the nest, and begin low', () => {
    const { days, fledging } = reckoned();
    expect(days).toHaveLength(fledging);
    expect(days[0]).toBeLessThan((days[7] as number) / 2);
  });

  it('ask on the dearest for no more than a nestling can turn over, and for little less', () => {
    for (const species of ['lavender waxbill', 'zebra finch', 'canary', 'budgerigar']) {
      const { days, mass, fledging } = reckoned(species);
      const peak = nestlingPeak(mass, fledging);
      expect(Math.max(...days), species).toBeLessThanOrEqual(peak);
      expect(Math.max(...days), species).toBeGreaterThan(0.97 * peak);
      expect(
        days.reduce((a, b) => a + b, 0),
        species,
      ).toBeCloseTo(nestlingTotal(mass, fledging), 9);
    }
  });

  it('ask for more from day to day until it is nearly grown', () => {
    const { days } = reckoned();
    for (let age = 1; age < 8; age++) expect(days[age]).toBeGreaterThan(days[age - 1] as number);
  });

  // A finch of 8 g that takes 30 days asks on some day for more than a nestling can turn over (Weathers 1992).
  it('are as even as they can be where they ask for more than a nestling can turn over', () => {
    const curve = logisticThrough(0.52, 8, 12);
    const days = nestlingDays(8, 30, (age) => logisticAt(curve, age));
    const dearest = Math.max(...days) / nestlingPeak(8, 30);
    expect(dearest).toBeGreaterThan(1);
    // All of it upkeep it would be 1.19, most of it growth as well.
    expect(dearest).toBeLessThan(1.02);
    expect(days.reduce((a, b) => a + b, 0)).toBeCloseTo(nestlingTotal(8, 30), 9);
  });

  it('hold the whole total even where the mass is told wrong', () => {
    const still = nestlingDays(10, 20, () => 5);
    expect(still.reduce((a, b) => a + b, 0)).toBeCloseTo(nestlingTotal(10, 20), 9);
    expect(new Set(still.map((kJ) => kJ.toFixed(6))).size).toBe(1);
  });
});

it('a bird in a cage needs no more than a free one', () => {
  const { low, likely, high } = adultNeed(12);
  expect(high).toBeCloseTo(freeLiving(12), 9);
  expect(low).toBeLessThan(likely);
  expect(likely).toBeLessThan(high);
});

it('one nestling may need a third more or a quarter less than the rule', () => {
  expect(nestlingNeed(10).high).toBeCloseTo(13, 9);
  expect(nestlingNeed(10).low).toBeCloseTo(10 / 1.3, 9);
});
