import { expect, it } from 'vitest';
import { day, moment, period, time } from '../../../src/journal/grammar/moment.ts';
import { typedValue } from './schemas.ts';

it.each([
  ['1970-01-02', 1],
  ['1.3.2026', 'date-shape'],
  ['2026-02-30', 'impossible-date'],
  ['[a]', 'wrong-value'],
])('day: %s', (typed, expected) => {
  expect(typedValue(day, typed)).toBe(expected);
});

it.each([
  ['1970-01-02', { from: 1, to: 1 }],
  ['1970-01', { from: 0, to: 30 }],
  [' 1970 ', { from: 0, to: 364 }],
  ['1972-02', { from: 761, to: 789 }],
  ['1972', { from: 730, to: 1095 }],
  ['1970-13', 'impossible-date'],
  ['1949', 'early-date'],
  ['24', 'date-shape'],
  ['May 1970', 'date-shape'],
  ['[1970]', 'wrong-value'],
])('period: %s', (typed, expected) => {
  expect(typedValue(period, typed)).toEqual(expected);
});

it.each([
  ['07:30', 450],
  ['1:30', 90],
  [' 07:30 ', 450],
  ['7.30', 'not-a-time'],
])('time: %s', (typed, expected) => {
  expect(typedValue(time, typed)).toBe(expected);
});

it.each([
  ['1970-01-02', { day: 1, time: null }],
  ['1970-01-02 18:00', { day: 1, time: 1080 }],
  ['1970-01-02T18:00', { day: 1, time: 1080 }],
  ['1970-01-02   18:00', { day: 1, time: 1080 }],
  [' 1970-01-02 ', { day: 1, time: null }],
  ['1970-01-02T6pm', 'not-a-time'],
  ['1970-01-02T18:00:30', 'not-a-time'],
  ['1970-01-02 18:00 or so', 'date-shape'],
  ['1.3.2026 18:00', 'date-shape'],
  ['18:00', { day: null, time: 1080 }],
  ['1970-01-02 25:00', 'not-a-time'],
  ['2026-02-30 18:00', 'impossible-date'],
  ['yesterday', 'date-shape'],
])('moment: %s', (typed, expected) => {
  expect(typedValue(moment, typed)).toEqual(expected);
});
