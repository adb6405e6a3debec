import { expect, test } from 'vitest';
import { meanOf, sumBy, sumOf } from '../../src/statistics/sums.ts';

test('numbers are added up', () => {
  expect(sumOf([])).toBe(0);
  expect(
    sumOf(
      new Map([
        ['clear', 3],
        ['broken', 1],
      ]).values(),
    ),
  ).toBe(4);
});

test('what each of them has is added up', () => {
  const clutches = [{ eggs: 4 }, { eggs: 0 }, { eggs: 5 }];
  expect(sumBy(clutches, ({ eggs }) => eggs)).toBe(9);
  expect(sumBy([], () => 1)).toBe(0);
});

test('the mean of numbers lies between them', () => {
  expect(meanOf([7])).toBe(7);
  expect(meanOf([11, 12, 14.5])).toBe(12.5);
});
