import { expect, it } from 'vitest';
import { eggSize } from '../../../src/journal/grammar/size.ts';
import { readLog } from '../reading.ts';
import { typedValue } from './schemas.ts';

it.each([
  ['14.2 x 10.8', { length: 14.2, breadth: 10.8 }],
  ['" 14.2 x 10.8 "', { length: 14.2, breadth: 10.8 }],
  ['14.2x10.8', { length: 14.2, breadth: 10.8 }],
  ['10.8 × 14', { length: 14, breadth: 10.8 }],
  ['14.2', 'not-a-size'],
  ['0 x 10.8', 'not-a-size'],
  [`${'9'.repeat(400)} x 10.8`, 'not-a-size'],
  ['14,2 x 10,8', 'not-a-size'],
])('%s: the longer side is the length', (typed, expected) => {
  expect(typedValue(eggSize, typed)).toEqual(expected);
});

it('a side that is nothing is told as typed', () => {
  expect(readLog('- {date: 2026-03-10, measured: {e1: 0 x 10.8}}').said).toEqual([
    '`0 x 10.8` is not an egg’s size',
  ]);
});
