import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  type Amount,
  about,
  between,
  exactly,
  inverse,
  NOTHING,
  product,
  sum,
  times,
} from '../../../src/rules/feed/amount.ts';

const positive = fc.double({ min: 0.01, max: 1000, noNaN: true });
const amount = fc.tuple(positive, positive).map(([a, b]) => between(Math.min(a, b), Math.max(a, b)));
const inOrder = ({ low, likely, high }: Amount) =>
  low <= likely * (1 + 1e-9) && likely <= high * (1 + 1e-9) && low >= 0;

it('the likely value lies as many times above the least as below the most', () => {
  expect(between(4, 9)).toEqual({ low: 4, likely: 6, high: 9 });
  expect(about(6, 1.5)).toEqual({ low: 4, likely: 6, high: 9 });
});

it('errors that are independent add up in quadrature, not end to end', () => {
  // 3-4-5: spreads of e^0.3 and e^0.4 make one of e^0.5.
  const { low, likely, high } = product(about(2, Math.exp(0.3)), about(5, Math.exp(0.4)));
  expect(likely).toBeCloseTo(10, 12);
  expect(high).toBeCloseTo(10 * Math.exp(0.5), 12);
  expect(low).toBeCloseTo(10 * Math.exp(-0.5), 12);
});

it('what is exact adds no doubt, and nothing of anything is nothing', () => {
  const doubled = product(between(4, 9), exactly(2));
  expect(doubled.low).toBeCloseTo(8, 12);
  expect(doubled.high).toBeCloseTo(18, 12);
  expect(product(between(4, 9), NOTHING)).toEqual(NOTHING);
});

it('the rest of a plain sum: birds that rest on one assumption are wrong together', () => {
  expect(sum([between(4, 9), between(1, 4), NOTHING])).toEqual({ low: 5, likely: 8, high: 13 });
  expect(sum([])).toEqual(NOTHING);
});

it('stays in order whatever is reckoned', () => {
  fc.assert(
    fc.property(amount, amount, positive, (a, b, factor) => {
      for (const result of [product(a, b), inverse(a), sum([a, b]), times(a, factor)]) {
        expect(inOrder(result)).toBe(true);
      }
      expect(product(a, inverse(a)).likely).toBeCloseTo(1, 9);
    }),
  );
});
