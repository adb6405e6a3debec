import { compiled, ndtr, ndtri } from 'cephes';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { normalCdf, normalDensity, normalQuantile } from '../../src/statistics/normal.ts';

// The other side of these comparisons is Moshier's Cephes library, compiled from its C source.
beforeAll(() => compiled);

const probability = fc.double({ min: 0, max: 1, minExcluded: true, maxExcluded: true, noNaN: true });

describe('normal distribution function', () => {
  it('agrees with Cephes', () => {
    for (let z = -12; z <= 12; z += 0.01) expect(normalCdf(z)).toBeCloseTo(ndtr(z), 14);
  });

  it('keeps its tail to 7 digits', () => {
    for (let z = -9; z <= -3; z += 0.01) expect(normalCdf(z) / ndtr(z)).toBeCloseTo(1, 7);
  });

  it('is one half at zero and the same from both ends', () => {
    expect(normalCdf(0)).toBeCloseTo(0.5, 15);
    fc.assert(
      fc.property(fc.double({ min: -40, max: 40, noNaN: true }), (z) => {
        expect(normalCdf(z) + normalCdf(-z)).toBeCloseTo(1, 14);
      }),
    );
  });

  it('ends at 0 and 1', () => {
    expect(normalCdf(-Infinity)).toBe(0);
    expect(normalCdf(Infinity)).toBe(1);
  });

  it('is the integral of the density', () => {
    const step = 0.001;
    for (const z of [-2.5, -1, 0, 0.3, 1.7]) {
      expect((normalCdf(z + step) - normalCdf(z - step)) / (2 * step)).toBeCloseTo(normalDensity(z), 6);
    }
  });
});

describe('normal quantile', () => {
  it('agrees with Cephes from 1e-300 to its complement', () => {
    for (let exponent = -300; exponent <= -1; exponent++) {
      const tail = 10 ** exponent;
      expect(normalQuantile(tail) / ndtri(tail)).toBeCloseTo(1, 14);
      if (exponent > -15) expect(normalQuantile(1 - tail)).toBeCloseTo(ndtri(1 - tail), 13);
    }
    for (let p = 0.001; p < 1; p += 0.001) expect(normalQuantile(p)).toBeCloseTo(ndtri(p), 13);
  });

  it('undoes the distribution function', () => {
    fc.assert(
      fc.property(probability, (p) => {
        expect(normalCdf(normalQuantile(p))).toBeCloseTo(p, 14);
      }),
    );
  });

  it('has no bounds at 0 and 1', () => {
    expect(normalQuantile(0)).toBe(-Infinity);
    expect(normalQuantile(1)).toBe(Infinity);
  });
});
