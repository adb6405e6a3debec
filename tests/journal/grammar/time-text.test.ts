import { expect, it } from 'vitest';
import { formatTime, parseTime, suggestTime } from '../../../src/journal/grammar/time-text.ts';

it.each([
  ['07:30', 450],
  ['7:30', 450],
  ['00:00', 0],
  ['23:59', 1439],
  ['24:00', null],
  ['007:30', null],
  ['07:300', null],
  ['at 07:30', null],
  ['07:60', null],
  ['7.30', null],
  ['', null],
])('%s is minute %s of the day', (text, minutes) => {
  expect(parseTime(text)).toBe(minutes);
});

it.each([
  ['7.30', '07:30'],
  ['7h30', '07:30'],
  ['0730', '07:30'],
  ['7', '07:00'],
  ['7 pm', '19:00'],
  ['12 am', '00:00'],
  ['12 pm', '12:00'],
  ['7 am', '07:00'],
  ['12.15', '12:15'],
  ['11 PM', '23:00'],
  ['13 pm', '13:00'],
  ['12 h', '12:00'],
  ['7:3', ''],
  ['at 7.30', ''],
  ['7.30 or so', ''],
  ['7.75', ''],
  ['7:30 pm', '19:30'],
  ['25:00', ''],
  ['dusk', ''],
])('%s was meant as %s', (text, meant) => {
  expect(suggestTime(text)).toBe(meant);
});

it('is written with two digits each', () => {
  expect(formatTime(5)).toBe('00:05');
  expect(formatTime(1439)).toBe('23:59');
  expect(formatTime(60)).toBe('01:00');
});
