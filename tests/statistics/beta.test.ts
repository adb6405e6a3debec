import { compiled, incbet, lbeta } from 'cephes';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import {
  atLeast,
  betaCdf,
  betaInterval,
  betaMean,
  betaQuantile,
  betaUpdate,
  betaWithMoments,
  logBeta,
  logGamma,
} from '../../src/statistics/beta.ts';

beforeAll(() => compiled);

const share = fc.double({ min: 0.001, max: 0.999, noNaN: true });

describe('the gamma function', () => {
  it('gives factorials', () => {
    let factorial = 1;
    for (let n = 1; n <= 20; n++) {
      expect(logGamma(n)).toBeCloseTo(Math.log(factorial), 11);
      factorial *= n;
    }
  });

  // Γ(x) is 1/x − γ near 0, γ = 0.5772…
  it('keeps its digits near 0', () => {
    expect(logGamma(1e-10)).toBeCloseTo(10 * Math.LN10, 9);
    expect(logGamma(1e-4)).toBeCloseTo(4 * Math.LN10 - 0.5772156649e-4, 7);
  });

  it('gives √π at a half', () => {
    expect(logGamma(0.5)).toBeCloseTo(Math.log(Math.PI) / 2, 13);
    expect(logGamma(0.25) + logGamma(0.75)).toBeCloseTo(Math.log(Math.PI * Math.SQRT2), 13);
  });
});

describe('the beta distribution', () => {
  it('agrees with Moshier’s Cephes library', () => {
    // For shapes much below a half beside large ones the library gives up and says 0; those are held against mpmath.
    const sound = fc.double({ min: 0.5, max: 500, noNaN: true });
    fc.assert(
      fc.property(sound, sound, share, (a, b, x) => {
        expect(logBeta(a, b)).toBeCloseTo(lbeta(a, b), 9);
        expect(betaCdf(x, { a, b })).toBeCloseTo(incbet(a, b, x), 9);
      }),
    );
  });

  it.each([
    [0.001, 0.05, 171.046852956722, 0.932984440270488],
    [0.9000770933891707, 171.046852956722, 0.05, 5.000000000000099e-11],
  ])('agrees with mpmath 1.3.0 (30 digits) at %d for shapes %d and %d', (x, a, b, probability) => {
    expect(betaCdf(x, { a, b }) / probability).toBeCloseTo(1, 10);
  });

  it('is a power where one shape is 1', () => {
    expect(betaCdf(0.3, { a: 4, b: 1 })).toBeCloseTo(0.3 ** 4, 14);
    expect(betaCdf(0.3, { a: 1, b: 4 })).toBeCloseTo(1 - 0.7 ** 4, 14);
    expect([betaCdf(0, { a: 2, b: 3 }), betaCdf(1, { a: 2, b: 3 })]).toEqual([0, 1]);
  });

  it('has the quantile at which its probability is p', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 200, noNaN: true }), share, (a, p) => {
        expect(betaCdf(betaQuantile(p, { a, b: a + 1 }), { a, b: a + 1 })).toBeCloseTo(p, 9);
      }),
    );
  });

  it('has the mean and variance that it was made of', () => {
    const { a, b } = betaWithMoments(0.8, 0.04);
    expect(betaMean({ a, b })).toBeCloseTo(0.8, 14);
    expect((a * b) / ((a + b) ** 2 * (a + b + 1))).toBeCloseTo(0.04, 14);
  });

  it('learns one at a time what it learns at once', () => {
    const slowly = betaUpdate(betaUpdate({ a: 2, b: 1 }, { k: 1, n: 1 }), { k: 0, n: 1 });
    expect(slowly).toEqual(betaUpdate({ a: 2, b: 1 }, { k: 1, n: 2 }));
  });

  it('has an interval about its median', () => {
    const { low, high } = betaInterval({ a: 3, b: 3 }, 0.9);
    expect(low + high).toBeCloseTo(1, 12);
    expect(betaCdf(high, { a: 3, b: 3 }) - betaCdf(low, { a: 3, b: 3 })).toBeCloseTo(0.9, 12);
  });
});

describe('at least so many of the next', () => {
  it('is certain of none or more, and impossible of more than there are', () => {
    expect(atLeast(0, 5, { a: 2, b: 3 })).toBeCloseTo(1, 12);
    expect(atLeast(6, 5, { a: 2, b: 3 })).toBe(0);
  });

  it('of one is the mean', () => {
    expect(atLeast(1, 1, { a: 2, b: 3 })).toBeCloseTo(0.4, 13);
  });

  it('of all under a flat belief is one in n + 1', () => {
    expect(atLeast(7, 7, { a: 1, b: 1 })).toBeCloseTo(1 / 8, 12);
  });
});
