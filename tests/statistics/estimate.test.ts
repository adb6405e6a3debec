import fc from 'fast-check';
import { expect, it } from 'vitest';
import { estimateOf, quantileOf } from '../../src/statistics/estimate.ts';

it('takes the least draw up to which the share lies', () => {
  const hundred = Array.from({ length: 100 }, (_, i) => 100 - i);
  expect(estimateOf(hundred)).toEqual({ mean: 50.5, low: 10, high: 90 });
  expect(quantileOf([1, 2, 3, 4], 0.5)).toBe(2);
  expect(quantileOf([1, 2, 3, 4], 0.51)).toBe(3);
});

it('has a range in order around every mean but a skew one, and always among the draws', () => {
  fc.assert(
    fc.property(fc.array(fc.nat(30), { minLength: 1 }), (draws) => {
      const { mean, low, high } = estimateOf(draws);
      expect(low).toBeLessThanOrEqual(high);
      expect(draws).toContain(low);
      expect(draws).toContain(high);
      expect(mean).toBeGreaterThanOrEqual(Math.min(...draws));
      expect(mean).toBeLessThanOrEqual(Math.max(...draws) + 1e-9);
    }),
  );
});
