import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Day, dayOf, formatDay, isoWeek, parseDay, weekday } from '../../src/days.ts';

const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];

const day = (text: string): Day => {
  const parsed = parseDay(text);
  if (parsed === null) throw new Error(`the test names no day: ${text}`);
  return parsed;
};

/** ISO 8601 week date: `2026-W53-4`. */
function weekDate(number: Day): string {
  const { year, week } = isoWeek(number);
  return `${year}-W${String(week).padStart(2, '0')}-${weekday(number)}`;
}

describe('ISO 8601 week dates', () => {
  it.each([
    // The conformance tests of the Temporal proposal (test262).
    ['1975-12-29', '1976-W01-1'],
    ['1976-01-04', '1976-W01-7'],
    ['1976-12-31', '1976-W53-5'],
    ['1977-01-02', '1976-W53-7'],
    ['1977-01-03', '1977-W01-1'],
    // Tests of date libraries that quote an encyclopaedia's table.
    ['2005-01-01', '2004-W53-6'],
    ['2006-01-01', '2005-W52-7'],
    ['2006-12-31', '2006-W52-7'],
    ['2007-12-31', '2008-W01-1'],
    ['2008-12-29', '2009-W01-1'],
    ['2010-01-03', '2009-W53-7'],
    ['2010-01-04', '2010-W01-1'],
    ['2019-12-30', '2020-W01-1'],
    ['2021-01-03', '2020-W53-7'],
    ['2023-01-01', '2022-W52-7'],
    ['2024-12-20', '2024-W51-5'],
    // Computed with Python's isocalendar.
    ['2022-12-31', '2022-W52-6'],
    ['2026-12-31', '2026-W53-4'],
    ['2027-01-03', '2026-W53-7'],
  ])('%s is %s', (date, week) => {
    expect(weekDate(day(date))).toBe(week);
  });

  // The list is quoted by documents on the week calendar and was recomputed; 28 December is always in the last week.
  const lastWeek = (year: number) => isoWeek(dayOf(year, 12, 28)).week;

  it('the years of 53 weeks from 1970 to 2060', () => {
    const years = Array.from({ length: 91 }, (_, index) => 1970 + index);
    expect(years.filter((year) => lastWeek(year) === 53)).toEqual([
      1970, 1976, 1981, 1987, 1992, 1998, 2004, 2009, 2015, 2020, 2026, 2032, 2037, 2043, 2048, 2054, 2060,
    ]);
  });

  it('400 years hold 71 years of 53 weeks and 20,871 weeks', () => {
    const weeks = Array.from({ length: 400 }, (_, index) => lastWeek(2000 + index));
    expect(weeks.filter((last) => last === 53)).toHaveLength(71);
    expect(weeks.reduce((sum, last) => sum + last, 0)).toBe(20_871);
  });
});

describe('day arithmetic', () => {
  // Computed with Python's datetime.
  it.each([
    ['2024-02-17', 13, '2024-03-01'],
    ['2023-02-17', 13, '2023-03-02'],
    ['2024-02-29', 365, '2025-02-28'],
    ['2000-02-15', 14, '2000-02-29'],
    ['2024-03-30', 2, '2024-04-01'],
    ['2024-10-26', 2, '2024-10-28'],
  ])('%s and %i days is %s', (start, days, result) => {
    expect(formatDay(day(start) + days)).toBe(result);
  });

  it.each([
    ['2020-02-29', '2024-02-29', 1461],
    ['1899-12-31', '1900-03-01', 60],
    ['2000-01-01', '2100-01-01', 36_525],
  ])('from %s to %s are %i days', (from, to, days) => {
    expect(day(to) - day(from)).toBe(days);
  });
});

const folder = process.env.NESTLOG_REFERENCE;

/** Rows of a comma-separated file without quotes, its heading left out. */
function rows(name: string): string[][] {
  const text = readFileSync(join(folder ?? '', 'statistics', name), 'utf8');
  return text
    .trim()
    .split(/\r?\n/)
    .slice(1)
    .map((line) => line.split(','));
}

describe.skipIf(folder === undefined)(
  'the longer lists (skipped where NESTLOG_REFERENCE names no folder)',
  () => {
    it('date-arithmetic.csv', () => {
      const sums = rows('date-arithmetic.csv');
      expect(sums.length).toBeGreaterThan(10);
      expect(sums.map(([start, days]) => formatDay(day(start ?? '') + Number(days)))).toEqual(
        sums.map(([, , result]) => result),
      );
    });

    it('iso-weeks.csv: weekday, week, day of the year, days since 1970', () => {
      const dates = rows('iso-weeks.csv');
      expect(dates.length).toBeGreaterThan(50);
      const counted = dates.map(([date = '']) => {
        const number = day(date);
        const dayOfYear = number - dayOf(Number(date.slice(0, 4)), 1, 1) + 1;
        return [date, WEEKDAYS[weekday(number) - 1], weekDate(number), String(dayOfYear), String(number)];
      });
      expect(counted).toEqual(dates);
    });
  },
);
