import { expect, test } from 'vitest';
import { capital, count, listed } from '../src/words.ts';

test('one is singular, none and many are plural', () => {
  expect([0, 1, 2].map((number) => count(number, 'pair'))).toEqual(['0 pairs', '1 pair', '2 pairs']);
  expect([1, 2].map((number) => count(number, 'entry', 'entries'))).toEqual(['1 entry', '2 entries']);
});

test('names are listed as a sentence does', () => {
  const some = [[], ['c1'], ['c1', 'c2'], ['c1', 'c2', 'c3']];
  expect(some.map(listed)).toEqual(['', 'c1', 'c1 and c2', 'c1, c2 and c3']);
});

test('a sentence begins with a capital, also one that is empty', () => {
  expect(['the young', ''].map(capital)).toEqual(['The young', '']);
});
