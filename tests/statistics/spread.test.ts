import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Measured, spreadBeyondError } from '../../src/statistics/spread.ts';

const nothing = { variance: 0.1, degrees: 0 };
const measured: fc.Arbitrary<Measured> = fc.record({
  value: fc.integer({ min: 0, max: 30 }),
  error: fc.integer({ min: 0, max: 12 }).map((quarters) => quarters / 4),
  times: fc.constant(1),
});
const believed = fc.record({
  variance: fc.integer({ min: 1, max: 20 }).map((tenths) => tenths / 10),
  degrees: fc.constant(8),
});

describe('the spread of true values', () => {
  // Thirteen trials of BCG vaccine (Colditz et al. 1994), log risk ratios and their variances, as the metafor package
  // for R has them (from memory); by restricted likelihood their true effects have the variance 0.3132.
  it('is that of the restricted likelihood where nothing was believed', () => {
    const trials = [
      [-0.8893, 0.3256],
      [-1.5854, 0.1946],
      [-1.3481, 0.4154],
      [-1.4416, 0.02],
      [-0.2175, 0.0512],
      [-0.7861, 0.0069],
      [-1.6209, 0.223],
      [0.012, 0.004],
      [-0.4694, 0.0564],
      [-1.3713, 0.073],
      [-0.3394, 0.0124],
      [0.4459, 0.5325],
      [-0.0173, 0.0714],
    ].map(([value, error]) => ({ value: value as number, error: error as number, times: 1 }));
    expect(spreadBeyondError(nothing, trials).variance).toBeCloseTo(0.3132, 3);
  });

  it('is squares about the mean over n − 1 where all was measured exactly', () => {
    const exact = [13, 14, 15, 18].map((value) => ({ value, error: 0, times: 1 }));
    const { variance, degrees } = spreadBeyondError(nothing, exact);
    expect(variance).toBeCloseTo(14 / 3, 12);
    expect(degrees).toBe(3);
  });

  it('stays what was believed without a measurement, and with a single one', () => {
    const belief = { variance: 0.4, degrees: 8 };
    expect(spreadBeyondError(belief, [])).toEqual(belief);
    expect(spreadBeyondError(belief, [{ value: 20, error: 4, times: 1 }]).variance).toBeCloseTo(0.4, 12);
  });

  it('stays what was believed, though it was worth nothing, where one measurement is all there is', () => {
    for (const error of [0, 0.3, 4]) {
      expect(spreadBeyondError(nothing, [{ value: 13, error, times: 1 }])).toEqual(nothing);
    }
  });

  it('is none where nothing was believed and all measurements agree, within their errors', () => {
    const alike = (error: number) => [13, 13.1, 13].map((value) => ({ value, error, times: 2 }));
    expect(spreadBeyondError(nothing, [{ value: 13, error: 0, times: 3 }])).toEqual({
      variance: 0,
      degrees: 2,
    });
    expect(spreadBeyondError(nothing, alike(1)).variance).toBeCloseTo(0, 12);
    expect(spreadBeyondError({ variance: 0, degrees: 8 }, alike(1))).toEqual({ variance: 0, degrees: 8 });
  });

  it('solves its equation: the mode of belief and restricted likelihood together', () => {
    fc.assert(
      fc.property(believed, fc.array(measured, { minLength: 2, maxLength: 12 }), (belief, all) => {
        const { variance } = spreadBeyondError(belief, all);
        const weights = all.map(({ error }) => 1 / (variance + error));
        const sum = (numbers: number[]) => numbers.reduce((total, one) => total + one, 0);
        const mean = sum(all.map(({ value }, i) => value * (weights[i] as number))) / sum(weights);
        const squares = sum(all.map(({ value }, i) => ((value - mean) * (weights[i] as number)) ** 2));
        const trace = sum(weights) - sum(weights.map((one) => one ** 2)) / sum(weights);
        const slope = (belief.degrees * (belief.variance - variance)) / variance ** 2 + squares - trace;
        expect(Math.abs(slope * variance)).toBeLessThan(1e-6);
      }),
    );
  });

  it('hardly heeds what is mostly error, and is worth hardly more for it', () => {
    const belief = { variance: 0.2, degrees: 8 };
    const exact = [12, 12, 13].map((value) => ({ value, error: 0, times: 1 }));
    const before = spreadBeyondError(belief, exact);
    const after = spreadBeyondError(belief, [...exact, { value: 15, error: 4, times: 1 }]);
    expect(after.variance).toBeLessThan(before.variance * 1.02);
    expect(after.degrees - before.degrees).toBeLessThan(0.1);
  });
});
