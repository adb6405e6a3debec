import { spawnSync } from 'node:child_process';
import { buildSync } from 'esbuild';
import fc from 'fast-check';
import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';
import {
  civilDate,
  type Day,
  dayOf,
  daysInMonth,
  dayWithYear,
  formatDay,
  foundWords,
  hullOf,
  isLeapYear,
  isoWeek,
  monthsAfter,
  parseDay,
  shortDay,
  shortSpan,
  spanOf,
  weekday,
  wholeMonths,
  without,
} from '../src/days.ts';

const MILLISECONDS = 86_400_000;

/** Every day that four digits of year can name. */
const anyDay = fc.integer({ min: dayOf(0, 1, 1), max: dayOf(9999, 12, 31) });

const inLuxon = (day: Day) => DateTime.fromMillis(day * MILLISECONDS, { zone: 'utc' });

const day = (text: string): Day => {
  const parsed = parseDay(text);
  if (parsed === null) throw new Error(`the test names no day: ${text}`);
  return parsed;
};

describe('a day is the number of days since 1970-01-01', () => {
  it('counts both ways from there', () => {
    expect(dayOf(1970, 1, 1)).toBe(0);
    expect(dayOf(1970, 1, 2)).toBe(1);
    expect(dayOf(1969, 12, 31)).toBe(-1);
  });

  it('agrees with plain UTC dates', () => {
    fc.assert(
      fc.property(anyDay, (number) => {
        const { year, month, date } = civilDate(number);
        expect(new Date(0).setUTCFullYear(year, month - 1, date)).toBe(number * MILLISECONDS);
        expect(dayOf(year, month, date)).toBe(number);
      }),
    );
  });

  it('agrees with luxon on date, weekday and ISO week', () => {
    fc.assert(
      fc.property(anyDay, (number) => {
        const luxon = inLuxon(number);
        expect(civilDate(number)).toEqual({ year: luxon.year, month: luxon.month, date: luxon.day });
        expect(weekday(number)).toBe(luxon.weekday);
        expect(isoWeek(number)).toEqual({ year: luxon.weekYear, week: luxon.weekNumber });
        expect(formatDay(number)).toBe(luxon.toISODate());
      }),
    );
  });

  it('agrees with luxon on every single day from 1999 to 2033', () => {
    for (let number = dayOf(1999, 1, 1); number <= dayOf(2033, 12, 31); number++) {
      const luxon = inLuxon(number);
      const { year, week } = isoWeek(number);
      expect(`${formatDay(number)} ${year}-W${String(week).padStart(2, '0')}-${weekday(number)}`).toBe(
        `${luxon.toISODate()} ${luxon.toISOWeekDate()}`,
      );
    }
  });

  it('adds days as luxon adds them on the clocks of a room in Berlin', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: dayOf(1980, 1, 1), max: dayOf(2060, 1, 1) }),
        fc.integer({ min: -500, max: 500 }),
        (start, days) => {
          const noon = DateTime.fromISO(`${formatDay(start)}T12:00`, { zone: 'Europe/Berlin' });
          expect(formatDay(start + days)).toBe(noon.plus({ days }).toISODate());
        },
      ),
    );
  });
});

it('several days span from the first to the last', () => {
  expect(spanOf([7, 3, 5])).toEqual({ from: 3, to: 7 });
  expect(spanOf([4])).toEqual({ from: 4, to: 4 });
  expect(
    hullOf([
      { from: 3, to: 9 },
      { from: 5, to: 7 },
    ]),
  ).toEqual({ from: 3, to: 9 });
});

describe('months are counted by the calendar', () => {
  const full = (text: string, months: number) => formatDay(monthsAfter(day(text), months));

  it('to the same date, in a shorter month to its last day', () => {
    expect(full('2026-03-15', 9)).toBe('2026-12-15');
    expect(full('2026-05-31', 9)).toBe('2027-02-28');
    expect(full('2027-05-31', 9)).toBe('2028-02-29');
    expect(full('2026-12-15', 12)).toBe('2027-12-15');
  });

  it('half a month is fifteen days and a little: sixteen, so that nobody is of age too early', () => {
    expect(full('2026-03-15', 1.5)).toBe('2026-05-01');
  });

  it('as luxon counts them', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: dayOf(1900, 1, 1), max: dayOf(2100, 1, 1) }),
        fc.integer({ min: 0, max: 240 }),
        (start, months) => {
          const end = monthsAfter(start, months);
          expect(formatDay(end)).toBe(inLuxon(start).plus({ months }).toISODate());
          expect(wholeMonths(start, end)).toBe(months);
          expect(wholeMonths(start, end - 1)).toBe(months - 1);
        },
      ),
    );
  });
});

describe('text of a day', () => {
  it('is read back as the same day', () => {
    fc.assert(
      fc.property(anyDay, (number) => {
        expect(parseDay(formatDay(number))).toBe(number);
      }),
    );
  });

  it('is a day exactly when the calendar has it', () => {
    const twoDigits = (max: number) =>
      fc.integer({ min: 0, max }).map((number) => String(number).padStart(2, '0'));
    const text = fc
      .tuple(fc.integer({ min: 0, max: 9999 }), twoDigits(14), twoDigits(33))
      .map(([year, month, date]) => `${String(year).padStart(4, '0')}-${month}-${date}`);
    fc.assert(
      fc.property(text, (written) => {
        const luxon = DateTime.fromISO(written, { zone: 'utc' });
        expect(parseDay(written)).toBe(luxon.isValid ? luxon.toMillis() / MILLISECONDS : null);
      }),
      { numRuns: 1000 },
    );
  });

  it.each(['2024-02-29', '2000-02-29', '2026-12-31', '0000-01-01'])('%s is a day', (text) => {
    expect(formatDay(day(text))).toBe(text);
  });

  it.each([
    '2026-02-30',
    '2026-02-29',
    '1900-02-29',
    '2026-04-31',
    '2026-13-01',
    '2026-00-10',
    '2026-01-00',
    '2026-1-1',
    '26-01-01',
    '20260101',
    '2026/01/01',
    '01-02-2026',
    '2026-01-01T07:30',
    ' 2026-01-01',
    '2026-01-01\n',
    '-2026-01-01',
    '２０２６-01-01',
    'yesterday',
    '',
  ])('%j is no day', (text) => {
    expect(parseDay(text)).toBeNull();
  });
});

describe('a day in a sentence', () => {
  it('goes without its year', () => {
    expect(shortDay(day('2026-03-04'))).toBe('4 Mar');
    expect(shortDay(day('2025-12-31'))).toBe('31 Dec');
    expect(dayWithYear(day('2025-12-31'))).toBe('31 Dec 2025');
  });

  it.each([
    ['2026-03-04', '2026-03-04', '4 Mar'],
    ['2026-03-03', '2026-03-04', '3–4 Mar'],
    ['2026-02-28', '2026-03-02', '28 Feb–2 Mar'],
    ['2025-12-30', '2026-01-02', '30 Dec–2 Jan'],
    ['2025-03-20', '2026-03-04', '20 Mar–4 Mar'],
  ])('from %s to %s is %s', (from, to, words) => {
    expect(shortSpan({ from: day(from), to: day(to) })).toBe(words);
  });
});

it('what was found is told by the day of the look, what is known to the day by itself', () => {
  expect(foundWords({ from: day('2026-03-04'), to: day('2026-03-04') })).toBe('4 Mar');
  expect(foundWords({ from: day('2026-03-01'), to: day('2026-03-04') })).toBe('by 4 Mar');
});

it('a time less a gap is what lies before it and what lies behind it', () => {
  const less = (from: number, to: number) => without({ name: 'flight 2', from: 10, to: 20 }, { from, to });
  const part = (from: number, to: number) => ({ name: 'flight 2', from, to });
  expect(less(12, 15)).toEqual([part(10, 12), part(15, 20)]);
  expect(less(5, 15)).toEqual([part(15, 20)]);
  expect(less(15, Number.POSITIVE_INFINITY)).toEqual([part(10, 15)]);
  expect(less(10, 20)).toEqual([]);
  expect([less(1, 10), less(1, 5), less(20, 25), less(25, 30)]).toEqual(Array(4).fill([part(10, 20)]));
});

describe('the Gregorian leap rule', () => {
  it('gives 97 leap years and 146,097 days to 400 years', () => {
    const years = Array.from({ length: 400 }, (_, index) => 2000 + index);
    const months = Array.from({ length: 12 }, (_, index) => index + 1);
    expect(years.filter(isLeapYear)).toHaveLength(97);
    const days = years.flatMap((year) => months.map((month) => daysInMonth(year, month)));
    expect(days.reduce((sum, length) => sum + length, 0)).toBe(146_097);
    expect(dayOf(2400, 1, 1) - dayOf(2000, 1, 1)).toBe(146_097);
  });

  it.each([
    [1900, false],
    [2000, true],
    [2023, false],
    [2024, true],
    [2100, false],
  ])('leap year %i: %s', (year, leap) => {
    expect(isLeapYear(year)).toBe(leap);
    expect(daysInMonth(year, 2)).toBe(leap ? 29 : 28);
  });
});

describe('the clocks of the keeper change nothing', () => {
  // Samoa had no 30 December 2011; in Santiago the clocks change at midnight, in Berlin at two and three.
  const starts = [
    '2011-12-28',
    '2024-03-30',
    '2024-04-06',
    '2024-09-07',
    '2024-10-26',
    '2026-03-28',
    '2026-12-27',
  ];
  const program = buildSync({
    stdin: {
      contents: `
        import { formatDay, isoWeek, parseDay, weekday } from './src/days.ts';
        const lines = ${JSON.stringify(starts)}.flatMap((start) =>
          Array.from({ length: 16 }, (_, days) => {
            const day = parseDay(start) + days;
            const { year, week } = isoWeek(day);
            return [start, days, formatDay(day), year, week, weekday(day)].join(' ');
          }),
        );
        const summer = new Date(2024, 6, 1).getTimezoneOffset();
        console.log(JSON.stringify({ summer, lines }));`,
      resolveDir: process.cwd(),
      loader: 'ts',
    },
    bundle: true,
    write: false,
    platform: 'node',
    format: 'cjs',
  }).outputFiles[0]?.text;

  const expected = starts.flatMap((start) =>
    Array.from({ length: 16 }, (_, days) => {
      const luxon = DateTime.fromISO(start, { zone: 'utc' }).plus({ days });
      return [start, days, luxon.toISODate(), luxon.weekYear, luxon.weekNumber, luxon.weekday].join(' ');
    }),
  );

  it.each([
    ['Pacific/Apia', -780],
    ['America/Santiago', 240],
    ['Europe/Berlin', -120],
    ['UTC', 0],
  ])('TZ=%s', (zone, minutesBehind) => {
    const run = spawnSync(process.execPath, ['-e', program ?? ''], { env: { TZ: zone }, encoding: 'utf8' });
    const { summer, lines } = JSON.parse(run.stdout);
    expect(summer, 'the zone is in force').toBe(minutesBehind);
    expect(lines).toEqual(expected);
  });
});
