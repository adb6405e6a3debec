import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type DayDistribution,
  type Delay,
  dayDistribution,
  probabilityBy,
  quantileDay,
} from '../../src/statistics/delay.ts';

const delays: fc.Arbitrary<Delay> = fc.record({
  mean: fc.integer({ min: 10, max: 120 }).map((quarters) => quarters / 4),
  variance: fc.double({ min: 0.05, max: 30, noNaN: true }),
});
const starts = fc
  .tuple(fc.integer({ min: -1000, max: 30_000 }), fc.integer({ min: 0, max: 20 }))
  .map(([from, width]) => ({ from, to: from + width }));
const shares = fc.double({ min: 0.001, max: 0.999, noNaN: true });

/** The q-day counted off the list of probabilities. */
function countedDay({ first, probabilities }: DayDistribution, q: number): number {
  let sum = 0;
  const index = probabilities.findIndex((probability) => {
    sum += probability;
    return sum >= q - 1e-11;
  });
  return first + index;
}

describe('what follows a start, day by day', () => {
  it('carries the probability of a day ± ½', () => {
    // Standard normal: within ½ of the mean 0.3829249225, from ½ to 1½ off 0.2417303375 (any table of Φ).
    const { first, probabilities } = dayDistribution({ mean: 12, variance: 1 }, { from: 100, to: 100 });
    expect(probabilities[112 - first]).toBeCloseTo(0.3829249225, 10);
    expect(probabilities[111 - first]).toBeCloseTo(0.2417303375, 10);
    expect(probabilities[113 - first]).toBeCloseTo(0.2417303375, 10);
  });

  it('sums to 1, no day below 0', () => {
    fc.assert(
      fc.property(delays, starts, (delay, start) => {
        const { probabilities } = dayDistribution(delay, start);
        expect(probabilities.reduce((sum, next) => sum + next, 0)).toBeCloseTo(1, 12);
        expect(Math.min(...probabilities)).toBeGreaterThanOrEqual(-1e-15);
        expect(probabilities[0], 'nothing lumped on the first day').toBeLessThan(1e-11);
        expect(probabilities.at(-1), 'nor on the last').toBeLessThan(1e-11);
        const days = start.to - start.from + 16 * Math.sqrt(delay.variance) + 6;
        expect(probabilities.length, 'and no days on which nothing can be').toBeLessThan(days);
      }),
    );
  });

  it('carries an uncertain start along: the average over its days', () => {
    fc.assert(
      fc.property(delays, starts, fc.integer({ min: -10, max: 40 }), (delay, start, after) => {
        const day = start.from + after;
        const days = Array.from({ length: start.to - start.from + 1 }, (_, index) => start.from + index);
        const sum = days.reduce((total, from) => total + probabilityBy(delay, { from, to: from }, day), 0);
        expect(probabilityBy(delay, start, day)).toBeCloseTo(sum / days.length, 12);
      }),
    );
  });

  it('moves with its start', () => {
    fc.assert(
      fc.property(delays, starts, shares, fc.integer({ min: -500, max: 500 }), (delay, start, q, moved) => {
        const later = { from: start.from + moved, to: start.to + moved };
        expect(quantileDay(delay, later, q)).toBe(quantileDay(delay, start, q) + moved);
      }),
    );
  });
});

describe('the q-day', () => {
  it('is the first day whose cumulative probability reaches q', () => {
    fc.assert(
      fc.property(delays, starts, shares, (delay, start, q) => {
        const day = quantileDay(delay, start, q);
        expect(probabilityBy(delay, start, day)).toBeGreaterThanOrEqual(q - 1e-11);
        expect(probabilityBy(delay, start, day - 1)).toBeLessThan(q + 1e-11);
        expect(day).toBe(countedDay(dayDistribution(delay, start), q));
      }),
    );
  });

  it('never falls as q rises', () => {
    fc.assert(
      fc.property(delays, starts, shares, shares, (delay, start, one, other) => {
        const lower = quantileDay(delay, start, Math.min(one, other));
        expect(quantileDay(delay, start, Math.max(one, other))).toBeGreaterThanOrEqual(lower);
      }),
    );
  });

  it('of one half is the mean itself, and the earlier day where the mean lies between two', () => {
    expect(quantileDay({ mean: 12, variance: 0.7 }, { from: 100, to: 100 }, 0.5)).toBe(112);
    expect(quantileDay({ mean: 12.5, variance: 0.7 }, { from: 100, to: 100 }, 0.5)).toBe(112);
    expect(quantileDay({ mean: 12.5, variance: 0.7 }, { from: 99, to: 101 }, 0.5)).toBe(112);
    // The same mean, reached by sums that were rounded differently.
    expect(quantileDay({ mean: 12.5 + 1e-14, variance: 0.7 }, { from: 100, to: 100 }, 0.5)).toBe(112);
  });
});
