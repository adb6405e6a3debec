import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { logisticAt, logisticThrough } from '../../src/statistics/logistic.ts';

const curve = { asymptote: 22.4, rate: 0.51, midpoint: 5 };

describe('a logistic curve', () => {
  it('is half-way at its midpoint and nears its asymptote', () => {
    expect(logisticAt(curve, 5)).toBeCloseTo(11.2, 12);
    expect(logisticAt(curve, 100)).toBeCloseTo(22.4, 9);
    expect(logisticAt(curve, -100)).toBeCloseTo(0, 9);
  });

  it('rises at its midpoint by A·K/4', () => {
    const slope = (logisticAt(curve, 5 + 1e-5) - logisticAt(curve, 5 - 1e-5)) / 2e-5;
    expect(slope).toBeCloseTo((22.4 * 0.51) / 4, 6);
  });

  it('through a start and a midpoint has both', () => {
    const small = fc.double({ min: 0.01, max: 0.49, noNaN: true });
    const positive = fc.double({ min: 0.1, max: 1000, noNaN: true });
    fc.assert(
      fc.property(small, positive, positive, (share, asymptote, midpoint) => {
        const made = logisticThrough(share * asymptote, asymptote, midpoint);
        expect(logisticAt(made, 0) / asymptote).toBeCloseTo(share, 9);
        expect(logisticAt(made, midpoint) / asymptote).toBeCloseTo(0.5, 9);
      }),
    );
  });
});
