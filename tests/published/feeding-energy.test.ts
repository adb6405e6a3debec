/**
 * Energy from mass. The formulas are carried over from memory: nestlings from Weathers 1992 (Ibis 134:142), free-living
 * adults from Nagy, Girard & Brown 1999 (Annual Review of Nutrition 19:247), live food from Finke 2002 (Zoo Biology
 * 21:269). So these tests hold the code to the formulas as remembered, worked by a second route; they do not prove that
 * the papers say so.
 */
import { describe, expect, it } from 'vitest';
import { freeLiving, nestlingDays, nestlingPeak, nestlingTotal } from '../../src/rules/feed/energy.ts';
import { factsOf } from '../../src/rules/feed/facts.ts';
import { allShipped } from '../../src/species/shipped.ts';

describe('worked with logarithms from a table (log 2 = 0.301030)', () => {
  it('a nestling of a 10 g bird that fledges at 20 d metabolises at most 26.25 kJ a day', () => {
    // log 11.69 = 1.067815; + 0.9082 · 1 − 0.428 · 1.301030 = 1.419174, of which the number is 26.253.
    expect(nestlingPeak(10, 20)).toBeCloseTo(26.253, 2);
  });

  it('and 396.8 kJ in all', () => {
    // log 6.65 = 0.822822; + 0.852 · 1 + 0.710 · 1.301030 = 2.598553, of which the number is 396.78.
    expect(nestlingTotal(10, 20)).toBeCloseTo(396.78, 1);
  });

  it('a free-living adult of 100 g 238.3 kJ a day, and one of 1 g the constant itself', () => {
    // log 10.4 = 1.017033; + 0.68 · 2 = 2.377033, of which the number is 238.25.
    expect(freeLiving(100)).toBeCloseTo(238.25, 1);
    expect(freeLiving(1)).toBe(10.4);
  });
});

describe('what must hold of allometry whatever the constants', () => {
  it('twice the mass makes 2^b times the energy', () => {
    expect(nestlingPeak(24, 17) / nestlingPeak(12, 17)).toBeCloseTo(2 ** 0.9082, 12);
    expect(nestlingTotal(24, 17) / nestlingTotal(12, 17)).toBeCloseTo(2 ** 0.852, 12);
    expect(freeLiving(24) / freeLiving(12)).toBeCloseTo(2 ** 0.68, 12);
  });

  it('a longer time in the nest makes a lower peak and a larger total', () => {
    expect(nestlingPeak(12, 24) / nestlingPeak(12, 12)).toBeCloseTo(2 ** -0.428, 12);
    expect(nestlingTotal(12, 24) / nestlingTotal(12, 12)).toBeCloseTo(2 ** 0.71, 12);
  });

  it('the curve of all passerines lies within 3 % of that of all birds between 5 and 50 g (Nagy, from memory)', () => {
    for (const mass of [5, 8.5, 12, 25, 50]) {
      expect(freeLiving(mass) / (10.5 * mass ** 0.681)).toBeGreaterThan(0.97);
      expect(freeLiving(mass) / (10.5 * mass ** 0.681)).toBeLessThan(1.03);
    }
  });
});

// The two regressions are of different birds and need not agree: the total is kept, the peak within a tenth.
describe('a nestling’s days, for every shipped species', () => {
  const facts = factsOf();
  const species = allShipped().map((profile) => ({ id: profile.id, ...facts(profile) }));

  it.each(species)('of $id add up to its total, and none is above its peak by more than a tenth', (each) => {
    const days = nestlingDays(each.mass, each.fledging, each.massAt);
    const total = nestlingTotal(each.mass, each.fledging);
    expect(days.reduce((a, b) => a + b, 0) / total).toBeCloseTo(1, 12);
    expect(Math.max(...days) / nestlingPeak(each.mass, each.fledging)).toBeLessThan(1.1);
    expect(Math.max(...days) / nestlingPeak(each.mass, each.fledging)).toBeGreaterThan(0.9);
  });
});
