import { expect, it } from 'vitest';
import { gramRange, likelyGrams, portion } from '../../../../src/report/terminal/feed/grams.ts';

it.each([
  [0.02, 0.5],
  [0.5, 0.5],
  [0.51, 1],
  [4.2, 4.5],
  [5.2, 6],
  [20, 20],
  [21, 25],
])('%f g is put out as %f g: never less, and no finer than a kitchen scale', (grams, out) => {
  expect(portion(grams)).toBe(out);
});

it.each([
  [0, 0, 0, 'none', 'none'],
  [0.1, 0.2, 0.4, 'under 1 g', 'under 1 g'],
  [0.4, 1.2, 3.3, 'up to 4 g', 'about 1 g (up to 4 g)'],
  [3.2, 5.1, 8.2, '3–9 g', 'about 5 g (3–9 g)'],
  [148, 305, 702, '100–750 g', 'about 300 g (100–750 g)'],
])('%f, %f, %f g is a range without false figures', (low, likely, high, range, about) => {
  expect(gramRange({ low, likely, high })).toBe(range);
  expect(likelyGrams({ low, likely, high })).toBe(about);
});
