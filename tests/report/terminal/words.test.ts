import { expect, test } from 'vitest';
import { count, naturally } from '../../../src/report/terminal/words.ts';

test('one is singular, none and many are plural', () => {
  expect([0, 1, 2].map((number) => count(number, 'pair'))).toEqual(['0 pairs', '1 pair', '2 pairs']);
  expect([1, 2].map((number) => count(number, 'entry', 'entries'))).toEqual(['1 entry', '2 entries']);
});

test('ids go by their numbers', () => {
  expect(['LW-10', 'LW-2', 'CB-11', 'LW-1'].sort(naturally)).toEqual(['CB-11', 'LW-1', 'LW-2', 'LW-10']);
});
