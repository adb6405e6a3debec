import { expect, it } from 'vitest';
import { isHeavierThanGrown, isSlip, mended } from '../../../src/rules/growth/slip.ts';

it('a mass is a slip far beyond the usual ones, not for a bird of a heavy or light strain', () => {
  const usual = { low: 10, high: 14 };
  expect([1.2, 3.9, 5, 12, 30, 36, 120].filter((grams) => isSlip(grams, usual))).toEqual([1.2, 3.9, 36, 120]);
});

it('is mended by a decimal point where that makes it usual', () => {
  const usual = { low: 10, high: 14 };
  expect([1.24, 124, 0.0124, 4000].map((grams) => mended(grams, usual))).toEqual([12.4, 12.4, null, null]);
});

it('no nestling weighs more than twice what its grown parents do', () => {
  const adult = { low: 10, high: 13 };
  expect([3.1, 14, 26, 31].filter((grams) => isHeavierThanGrown(grams, adult))).toEqual([31]);
});
