import { expect, test } from 'vitest';
import { count } from '../../../src/report/terminal/words.ts';

test('one is singular, none and many are plural', () => {
  expect([0, 1, 2].map((number) => count(number, 'pair'))).toEqual(['0 pairs', '1 pair', '2 pairs']);
  expect([1, 2].map((number) => count(number, 'entry', 'entries'))).toEqual(['1 entry', '2 entries']);
});
