/**
 * Proportions with small counts. Unless a test says otherwise the digits were computed with R 4.2.2 (prop.test,
 * binom.test, qbeta) and agree with mpmath.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { betaQuantile } from '../../src/statistics/beta.ts';
import { differenceOf, type Interval, wilson } from '../../src/statistics/proportions.ts';

const reference = process.env.NESTLOG_REFERENCE;

function close(interval: Interval | null, low: number, high: number, digits: number): void {
  expect(interval?.low).toBeCloseTo(low, digits);
  expect(interval?.high).toBeCloseTo(high, digits);
}

describe('Newcombe 1998, Statistics in Medicine 17:857–872, table I, method 3', () => {
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('%i of %i, as printed', (k, n, low, high) => {
    close(wilson({ k, n }), low, high, 4);
  });

  it.each([
    [81, 263, 0.2552885199, 0.366209577],
    [15, 148, 0.0623863995, 0.1604872417],
    [0, 20, 0, 0.1611251581],
    [1, 29, 0.0061132143, 0.1717552188],
  ])('%i of %i, recomputed', (k, n, low, high) => {
    close(wilson({ k, n }), low, high, 9);
  });
});

describe('a clutch or two', () => {
  it.each([
    [0, 1, 0, 0.7934506856],
    [1, 1, 0.2065493144, 1],
    [0, 5, 0, 0.4344824648],
    [2, 5, 0.1176207742, 0.7692757187],
    [3, 4, 0.3006418426, 0.9544127392],
    [4, 5, 0.3755346298, 0.9637758914],
    [5, 5, 0.5655175352, 1],
    [20, 20, 0.8388748419, 1],
    [23, 60, 0.2708827237, 0.5098240418],
  ])('%i of %i', (k, n, low, high) => {
    close(wilson({ k, n }), low, high, 9);
  });
});

describe('Newcombe 1998, Statistics in Medicine 17:873–890, table II, method 10', () => {
  it.each([
    [56, 70, 48, 80, 0.2, 0.0524, 0.3339],
    [9, 10, 3, 10, 0.6, 0.1705, 0.809],
    [5, 56, 0, 29, 0.0892857143, -0.0381, 0.1926],
    [0, 10, 0, 20, 0, -0.1611, 0.2775],
    [10, 10, 0, 20, 1, 0.6791, 1],
  ])('%i/%i − %i/%i, as printed', (k, n, otherK, otherN, difference, low, high) => {
    const found = differenceOf({ k, n }, { k: otherK, n: otherN });
    expect(found?.difference).toBeCloseTo(difference, 9);
    close(found, low, high, 4);
  });

  it.each([
    [56, 70, 48, 80, 0.0524314724, 0.333872654],
    [9, 10, 3, 10, 0.1705227239, 0.8090179735],
    [5, 56, 0, 29, -0.0381371479, 0.1925600139],
    [0, 10, 0, 20, -0.1611251581, 0.2775327999],
    [10, 10, 0, 20, 0.6790860371, 1],
    [3, 4, 5, 9, -0.3225544124, 0.5483515517],
  ])('%i/%i − %i/%i, recomputed', (k, n, otherK, otherN, low, high) => {
    close(differenceOf({ k, n }, { k: otherK, n: otherN }), low, high, 9);
  });
});

describe.skipIf(reference === undefined)('a table computed with R', () => {
  const rows = () => {
    const text = readFileSync(join(reference as string, 'statistics/proportions-24.csv'), 'utf8');
    const [head = '', ...lines] = text.trim().split('\n');
    const names = head.split(',');
    return lines.map((line) =>
      Object.fromEntries(line.split(',').map((cell, i) => [names[i] ?? '', Number(cell)])),
    );
  };

  it('score intervals at 95 % and 90 %', () => {
    const all = rows();
    expect(all.length).toBeGreaterThan(10);
    for (const { x = 0, n = 0, wilson_lo, wilson_hi, wilson90_lo, wilson90_hi } of all) {
      close(wilson({ k: x, n }), wilson_lo as number, wilson_hi as number, 9);
      close(wilson({ k: x, n }, 0.9), wilson90_lo as number, wilson90_hi as number, 9);
    }
  });

  // Clopper and Pearson's limits are quantiles of beta distributions, and so are Jeffreys'.
  it('quantiles of the beta distribution', () => {
    for (const { x = 0, n = 0, cp_lo, cp_hi, jeffreys_raw_lo, jeffreys_raw_hi } of rows()) {
      if (x > 0) expect(betaQuantile(0.025, { a: x, b: n - x + 1 })).toBeCloseTo(cp_lo as number, 9);
      if (x < n) expect(betaQuantile(0.975, { a: x + 1, b: n - x })).toBeCloseTo(cp_hi as number, 9);
      const jeffreys = { a: x + 0.5, b: n - x + 0.5 };
      expect(betaQuantile(0.025, jeffreys)).toBeCloseTo(jeffreys_raw_lo as number, 9);
      expect(betaQuantile(0.975, jeffreys)).toBeCloseTo(jeffreys_raw_hi as number, 9);
    }
  });
});
