import { expect, test } from 'vitest';
import {
  capital,
  count,
  daysRange,
  either,
  few,
  fromTo,
  listed,
  offsetAfter,
  stated,
  them,
} from '../src/words.ts';

test('one is singular, none and many are plural', () => {
  expect([0, 1, 2].map((number) => count(number, 'pair'))).toEqual(['0 pairs', '1 pair', '2 pairs']);
  expect([1, 2].map((number) => count(number, 'entry', 'entries'))).toEqual(['1 entry', '2 entries']);
});

test('names are listed as a sentence does', () => {
  const some = [[], ['c1'], ['c1', 'c2'], ['c1', 'c2', 'c3']];
  expect(some.map(listed)).toEqual(['', 'c1', 'c1 and c2', 'c1, c2 and c3']);
});

test('of many names the first are told and the others counted', () => {
  expect(few(['c1', 'c2', 'c3'], 3)).toEqual(['c1', 'c2', 'c3']);
  expect(few(['c1', 'c2', 'c3'], 2)).toEqual(['c1', 'c2', '1 more']);
  expect(few(['A', 'B', 'C', 'D'], 2, 'others')).toEqual(['A', 'B', '2 others']);
});

test('a range has one figure where both ends are one', () => {
  expect([fromTo(4, 9), fromTo(4, 4)]).toEqual(['4–9', '4']);
  expect([daysRange({ low: 11, high: 13 }), daysRange({ low: 12, high: 12 })]).toEqual(['11–13 d', '12 d']);
});

test('one of several birds is either of them', () => {
  expect([[], ['A'], ['A', 'B']].map(either)).toEqual([null, 'A', 'A or B']);
});

test('a sentence begins with a capital, also one that is empty', () => {
  expect(['the young', ''].map(capital)).toEqual(['The young', '']);
});

test('one is it, several are them', () => {
  expect([1, 2].map(them)).toEqual(['it', 'them']);
});

test('a code point is one, however many units it takes; a text that is shorter ends', () => {
  expect([offsetAfter('a🐣b', 2), offsetAfter('a🐣b', 1, 3), offsetAfter('a', 5)]).toEqual([3, 4, 1]);
});

test('of what nobody wrote nothing is said, not even its dot', () => {
  expect(stated(['LW-1', null, 'cage 3'])).toBe('LW-1 · cage 3');
  expect(stated(['c1', null, 'c2'], ', ')).toBe('c1, c2');
  expect(stated([null])).toBe('');
});
