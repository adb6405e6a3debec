import { expect, it } from 'vitest';
import { minutes, monthAndDate, share } from '../../../src/journal/grammar/amounts.ts';
import { read } from '../reading.ts';
import { typedValue } from './schemas.ts';

it.each([
  ['01-01', { month: 1, date: 1 }],
  ['09-15', { month: 9, date: 15 }],
  ['02-30', 'not-month-and-date'],
  ['12-31', { month: 12, date: 31 }],
  ['" 09-01 "', { month: 9, date: 1 }],
  ['02-29', { month: 2, date: 29 }],
  ['13-01', 'not-month-and-date'],
  ['00-01', 'not-month-and-date'],
  ['01-00', 'not-month-and-date'],
  ['09-155', 'not-month-and-date'],
  ['109-15', 'not-month-and-date'],
  ['9-15', 'not-month-and-date'],
])('month and date: %s', (typed, expected) => {
  expect(typedValue(monthAndDate, typed)).toEqual(expected);
});

it.each([
  ['2026-09-01', 'write 09-01'],
  ['1 September', 'write 09-01'],
  ['September 1, 2026', 'write 09-01'],
  ['2026-09-01 07:30', 'write 09-01'],
  ['3/4', 'write 03-04 or 04-03'],
  ['13-01', 'write month and date: 09-01'],
  ['autumn', 'write month and date: 09-01'],
])('the season that begins on %s is answered with the day of any year', (typed, fix) => {
  expect(read(`season-start: ${typed}\n`, 'nestlog.yaml').fixes).toEqual([fix]);
});

it.each([
  ['0.125', 0.125],
  ['12.5 %', 0.125],
  ['100%', 1],
  ['.125', 0.125],
  ['" 12 % "', 0.12],
  ['101 %', 'not-a-share'],
  ['x 12 %', 'not-a-share'],
  ['12 % x', 'not-a-share'],
  ['0', 0],
  ['1', 1],
  ['12.5', 'not-a-share'],
  ['-1', 'not-a-share'],
  ['half', 'not-a-share'],
])('share: %s', (typed, expected) => {
  expect(typedValue(share, typed)).toBe(expected);
});

it.each([
  ['90', 90],
  ['45 min', 45],
  ['" 3 h "', 180],
  ['1.5 h', 90],
  ['1:30', 90],
  ['1.26 h', 76],
  ['5h', 300],
  ['12345', 'not-minutes'],
  ['ca 90', 'not-minutes'],
  ['90 minutes', 'not-minutes'],
  ['0', 'not-minutes'],
  ['soon', 'not-minutes'],
])('minutes: %s', (typed, expected) => {
  expect(typedValue(minutes, typed)).toBe(expected);
});
