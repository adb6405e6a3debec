import { expect, it } from 'vitest';
import { isSlip, mended } from '../../../src/rules/growth/slip.ts';

it('a mass is a slip far beyond the usual ones, not for a bird of a heavy or light strain', () => {
  const usual = { low: 10, high: 14 };
  expect([1.2, 3.9, 5, 12, 30, 36, 120].filter((grams) => isSlip(grams, usual))).toEqual([1.2, 3.9, 36, 120]);
});

it('is mended by a decimal point where that makes it usual', () => {
  const usual = { low: 10, high: 14 };
  expect([1.24, 124, 0.0124, 4000].map((grams) => mended(grams, usual))).toEqual([12.4, 12.4, null, null]);
});
