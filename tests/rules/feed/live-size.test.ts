import { expect, it } from 'vitest';
import { liveSizeFor, liveSizes } from '../../../src/rules/feed/live-size.ts';

// Common practice: the smallest kinds for hatchlings of small finches, 10 mm for grown waxbills.
it.each([
  [0.4, 3],
  [0.7, 4],
  [3, 7],
  [8, 10],
  [8.5, 10],
  [35, 15],
])('a chick of %f g gets pieces of up to %i mm', (mass, upTo) => {
  expect(liveSizeFor(mass).upTo).toBe(upTo);
});

it('nothing is too small for the smallest size, and sizes grow with mass', () => {
  expect(liveSizeFor(0.01)).toBe(liveSizes[0]);
  const sizes = Array.from({ length: 50 }, (_, i) => liveSizeFor(i).upTo);
  expect([...sizes].sort((a, b) => a - b)).toEqual(sizes);
});
