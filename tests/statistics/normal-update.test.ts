import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Estimate, normalUpdate } from '../../src/statistics/normal-update.ts';

const estimate: fc.Arbitrary<Estimate> = fc.record({
  mean: fc.double({ min: -50, max: 50, noNaN: true }),
  variance: fc.double({ min: 0.01, max: 100, noNaN: true }),
});
const estimates = fc.array(estimate, { maxLength: 12 });

describe('a belief updated by measurements', () => {
  it('stays exactly as it is without any', () => {
    fc.assert(
      fc.property(estimate, (belief) => {
        expect(normalUpdate(belief, [])).toEqual(belief);
      }),
    );
  });

  it('is the same one at a time, all at once and in any order', () => {
    fc.assert(
      fc.property(estimate, estimates, (belief, measurements) => {
        const together = normalUpdate(belief, measurements);
        const oneByOne = measurements.reduce((sum, next) => normalUpdate(sum, [next]), belief);
        const backwards = normalUpdate(belief, [...measurements].reverse());
        for (const other of [oneByOne, backwards]) {
          expect(other.mean).toBeCloseTo(together.mean, 8);
          expect(other.variance).toBeCloseTo(together.variance, 10);
        }
      }),
    );
  });

  it('is surer after each one', () => {
    fc.assert(
      fc.property(estimate, estimate, (belief, measurement) => {
        const { variance } = normalUpdate(belief, [measurement]);
        expect(variance).toBeLessThan(Math.min(belief.variance, measurement.variance));
      }),
    );
  });

  it('lies between what was believed and what was measured', () => {
    fc.assert(
      fc.property(estimate, estimate, (belief, measurement) => {
        const { mean } = normalUpdate(belief, [measurement]);
        expect(mean).toBeGreaterThanOrEqual(Math.min(belief.mean, measurement.mean) - 1e-9);
        expect(mean).toBeLessThanOrEqual(Math.max(belief.mean, measurement.mean) + 1e-9);
      }),
    );
  });
});
