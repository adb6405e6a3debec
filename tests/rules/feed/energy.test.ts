import { describe, expect, it } from 'vitest';
import {
  adultNeed,
  freeLiving,
  nestlingDays,
  nestlingNeed,
  nestlingTotal,
} from '../../../src/rules/feed/energy.ts';
import { factsOf } from '../../../src/rules/feed/facts.ts';
import { findSpecies } from '../../../src/species/find.ts';

describe('a nestling’s days', () => {
  const { massAt, mass, fledging } = factsOf()(findSpecies('lavender waxbill', []));
  const days = nestlingDays(mass, fledging, massAt);

  it('are as many as it spends in the nest, and begin low', () => {
    expect(days).toHaveLength(fledging);
    expect(days[0]).toBeLessThan((days[7] as number) / 2);
  });

  it('ask for more from day to day until it is nearly grown', () => {
    for (let age = 1; age < 8; age++) expect(days[age]).toBeGreaterThan(days[age - 1] as number);
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
