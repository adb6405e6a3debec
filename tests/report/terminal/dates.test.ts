import { describe, expect, test } from 'vitest';
import {
  dateSpan,
  fullDate,
  lateness,
  longDate,
  periodText,
  relativeDay,
  shortDate,
  weekdayDate,
} from '../../../src/report/terminal/dates.ts';
import { day } from '../mornings.ts';

const standing = day('2026-03-01');

test('a date has its weekday, and its year only where that is another than the day stood on', () => {
  // ISO 8601: 1 March 2026 is a Sunday; 1 January 2027 is a Friday.
  expect(weekdayDate(day('2026-03-01'), standing)).toBe('Sun 1 Mar');
  expect(weekdayDate(day('2027-01-01'), standing)).toBe('Fri 1 Jan 2027');
  expect(shortDate(day('2025-09-30'), standing)).toBe('30 Sep 2025');
  expect(longDate(standing)).toBe('Sunday 1 March 2026');
  expect(fullDate(standing)).toBe('1 March 2026');
});

test.each([
  ['2024-01-01', '2024-12-31', '2024'],
  ['2024-02-01', '2024-02-29', 'Feb 2024'],
  ['2024-12-01', '2024-12-31', 'Dec 2024'],
  ['2024-02-01', '2024-02-28', '1–28 Feb 2024'],
  ['2024-01-01', '2025-12-31', '1 Jan 2024–31 Dec 2025'],
  ['2024-01-01', '2024-06-30', '1 Jan–30 Jun 2024'],
  ['2026-01-01', '2026-01-01', '1 Jan'],
])('from %s to %s is %s', (from, to, words) => {
  expect(periodText({ from: day(from), to: day(to) }, standing)).toBe(words);
});

describe('a window', () => {
  test.each([
    ['within a month', '2026-03-01', '2026-03-03', '1–3 Mar'],
    ['over a month’s end', '2026-02-28', '2026-03-02', '28 Feb–2 Mar'],
    ['of one day', '2026-03-01', '2026-03-01', '1 Mar'],
    ['over New Year', '2025-12-30', '2026-01-02', '30 Dec 2025–2 Jan 2026'],
    ['of the same month in another year', '2026-03-01', '2027-03-03', '1 Mar 2026–3 Mar 2027'],
    ['in another year', '2027-03-01', '2027-03-03', '1–3 Mar 2027'],
  ])('%s', (_, from, to, words) => {
    expect(dateSpan(day(from), day(to), standing)).toBe(words);
  });

  test('without an end has begun or is going to', () => {
    expect(dateSpan(day('2026-02-26'), null, standing)).toBe('since 26 Feb');
    expect(dateSpan(standing, null, standing)).toBe('since 1 Mar');
    expect(dateSpan(day('2026-03-04'), null, standing)).toBe('from 4 Mar on');
  });
});

test.each([
  [0, 'today'],
  [1, 'tomorrow'],
  [-1, 'yesterday'],
  [3, 'in 3 d'],
  [-3, '3 d ago'],
])('%i days on is %s', (days, words) => {
  expect(relativeDay(standing + days, standing)).toBe(words);
});

test('what should have ended on Friday is two days late on Sunday', () => {
  expect(lateness(day('2026-02-27'), standing)).toBe('2 d late');
});
