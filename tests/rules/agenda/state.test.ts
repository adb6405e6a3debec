import { expect, test } from 'vitest';
import { stateOn } from '../../../src/rules/agenda/state.ts';

const window = { from: 10, to: 12 };

test('a task is coming before its days, now within them, late after them', () => {
  expect([9, 10, 12, 13].map((day) => stateOn(day, window, null))).toEqual(['coming', 'now', 'now', 'late']);
});

test('without a last day it stays now until something happens', () => {
  expect(stateOn(400, { from: 10, to: null }, null)).toBe('now');
});

test('past the day on which it lapses it is shown no more', () => {
  expect([14, 15].map((day) => stateOn(day, window, 14))).toEqual(['late', null]);
});
