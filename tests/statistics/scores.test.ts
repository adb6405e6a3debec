import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayDistribution } from '../../src/statistics/delay.ts';
import { crpsDays } from '../../src/statistics/scores.ts';
import { crpsNormal } from './crps-normal.ts';

const value = fc.double({ min: -30, max: 30, noNaN: true });
const deviation = fc.double({ min: 0.2, max: 8, noNaN: true });

/** The normal distribution function by its power series, not by the code under test. */
function phi(z: number): number {
  if (Math.abs(z) > 7) return z < 0 ? 0 : 1;
  let term = z;
  let sum = z;
  for (let k = 3; k < 200; k += 2) {
    term *= (z * z) / k;
    sum += term;
  }
  return 0.5 + (sum * Math.exp((-z * z) / 2)) / Math.sqrt(2 * Math.PI);
}

describe('continuous ranked probability score', () => {
  it('of a certain forecast is how many days it was out', () => {
    fc.assert(
      fc.property(fc.integer({ min: -50, max: 50 }), fc.integer({ min: -50, max: 50 }), (day, happened) => {
        expect(crpsDays({ first: day, probabilities: [1] }, happened)).toBe(Math.abs(day - happened));
      }),
    );
  });

  it('of a normal forecast is the integral of the squared distance', () => {
    const step = 0.001;
    for (const happened of [11, 13.2, 16]) {
      let sum = 0;
      for (let index = 0; index < 20_000; index++) {
        const x = 3 + (index + 0.5) * step;
        sum += (phi((x - 13.2) / 0.9) - (x >= happened ? 1 : 0)) ** 2 * step;
      }
      expect(crpsNormal(13.2, 0.9, happened)).toBeCloseTo(sum, 6);
    }
  });

  it('by days comes near the normal one where the spread is wide against a day', () => {
    for (const happened of [5, 12, 30]) {
      const forecast = dayDistribution({ mean: 14, variance: 36 }, { from: 0, to: 0 });
      expect(crpsDays(forecast, happened)).toBeCloseTo(crpsNormal(14, 6, happened), 1);
    }
  });

  it('is never negative and the same on both sides', () => {
    fc.assert(
      fc.property(value, deviation, value, (mean, spread, off) => {
        const score = crpsNormal(mean, spread, mean + off);
        expect(score).toBeGreaterThan(0);
        expect(crpsNormal(mean, spread, mean - off)).toBeCloseTo(score, 9);
      }),
    );
  });
});
