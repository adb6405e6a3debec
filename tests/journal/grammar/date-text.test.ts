import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatDay, parseDay } from '../../../src/days.ts';
import { dateMeant, monthNamed, readDate, readPeriod } from '../../../src/journal/grammar/date-text.ts';

/** The code of the finding and what was probably meant. */
function answer(text: string, near: number | null = 2026): string {
  const read = readDate(text, near);
  return 'day' in read ? formatDay(read.day) : `${read.code}: ${read.args.suggestion}`;
}

describe('a date', () => {
  it('is year, month and day', () => {
    expect(answer('2026-03-01')).toBe('2026-03-01');
    expect(answer(' 2024-02-29 ')).toBe('2024-02-29');
  });

  it.each([
    ['2026-02-30', '2026-02-28'],
    ['2026-02-29', '2026-02-28'],
    ['2024-02-30', '2024-02-29'],
    ['2026-04-31', '2026-04-30'],
    ['2026-13-02', '2026-02-13'],
    ['2026-13-32', ''],
    ['2026-12-32', '2026-12-31'],
    ['2026-13-12', '2026-12-13'],
    ['2026-01-00', '2026-01-01'],
    ['2026-03-00', '2026-03-01'],
    ['2026-00-03', ''],
  ])('%s is in no calendar; %s was meant', (text, meant) => {
    expect(answer(text)).toBe(`impossible-date: ${meant}`);
  });

  it('that is impossible says how long the month is', () => {
    expect(readDate('2026-02-30')).toMatchObject({ args: { month: 'February 2026', days: 28 } });
    expect(readDate('2026-13-02')).toMatchObject({ args: { text: '2026-13-02', month: '', days: 0 } });
  });

  it.each([
    ['1.3.2026', '2026-03-01'],
    ['01. 03. 2026', '2026-03-01'],
    ['1.3.26', '2026-03-01'],
    ['2026/03/01', '2026-03-01'],
    ['2026.3.1', '2026-03-01'],
    ['2026-3-1', '2026-03-01'],
    ['20260301', '2026-03-01'],
    ['2026-03-01T07:30', '2026-03-01, time: 07:30'],
    ['2026-03-01 07:30', '2026-03-01, time: 07:30'],
    ['13/3/2026', '2026-03-13'],
    ['3/13/2026', '2026-03-13'],
    ['1/3/2026', '2026-03-01 or 2026-01-03'],
    ['3/3/2026', '2026-03-03'],
    ['1 March 2026', '2026-03-01'],
    ['March 1, 2026', '2026-03-01'],
    ['1st Mar', '2026-03-01'],
    ['1 January 2025', '2025-01-01'],
    ['31 Dec', '2026-12-31'],
    ['1 ma', ''],
    ['March', ''],
    ['1 2 3 March', ''],
    ['1 Marsh 2026', ''],
    ['Day 12', ''],
    ['31 February 2026', ''],
    ['03-01', '2026-03-01'],
    ['3/1', '2026-03-01 or 2026-01-03'],
    ['12-31', '2026-12-31'],
    ['13-01', ''],
    ['about 03-01', ''],
    ['03-01 or so', ''],
    ['25. 12.', '2026-12-25'],
    ['31. 4.', ''],
    ['about 1.3.', ''],
    ['1.3. early', ''],
    ['12.3.2026', '2026-03-12'],
    ['5. 12. 2026', '2026-12-05'],
    ['5.13.2026', '2026-05-13'],
    ['5-12-26', '2026-12-05 or 2026-05-12'],
    ['on 1.3.2026', ''],
    ['1.3.2026 or so', ''],
    ['1.3-2026', ''],
    ['2026 3 1', '2026-03-01'],
    ['2026/31/03', '2026-03-31'],
    ['on 2026/03/01', ''],
    ['2026/03/011', ''],
    ['202603011', ''],
    ['x20260301', ''],
    ['2026-02-30T07:30', ''],
    ['at 2026-03-01 07:30', ''],
    ['1.3.', '2026-03-01'],
    ['2026–03–02', '2026-03-02'],
    ['2026–3–2', '2026-03-02'],
    ['1.3', '2026-03-01'],
    ['1.3.69', '1969-03-01'],
    ['1.3.68', '2068-03-01'],
    ['2026 March 1', '2026-03-01'],
    ['on 2026-02-30', ''],
    ['31.2.2026', ''],
    ['yesterday', ''],
    ['', ''],
    ['2026-03', ''],
  ])('written as %s is answered with the right form: %s', (text, meant) => {
    expect(answer(text)).toBe(`date-shape: ${meant}`);
  });

  it('with a short year in front has the one of the dates around it, if it is that', () => {
    expect(answer('24-03-27', 2024)).toBe('date-shape: 2024-03-27');
    expect(answer('24-03-26', 2026)).toBe('date-shape: 2026-03-24');
    expect(answer('24-03-2026', 2024)).toBe('date-shape: 2026-03-24');
    expect(answer('24.03.27', 2024)).toBe('date-shape: 2027-03-24');
    expect(answer('24-03-27', null)).toBe('date-shape: 2027-03-24');
  });

  it('without a year has none to be answered with where the file has no other date', () => {
    expect(answer('03-01', null)).toBe('date-shape: ');
    expect(answer('1 March', null)).toBe('date-shape: ');
    expect(answer('1.3.', null)).toBe('date-shape: ');
    expect(answer('1 March 2025', null)).toBe('date-shape: 2025-03-01');
    expect(answer('1948-02-28', null)).toBe('early-date: ');
  });

  it.each([
    ['1026-03-01', '2026-03-01'],
    ['0026-03-01', '2026-03-01'],
    ['1949-12-31', '2026-12-31'],
    ['1948-02-29', ''],
  ])('%s is a slip of the finger for %s', (text, meant) => {
    expect(answer(text)).toBe(`early-date: ${meant}`);
  });

  it('of 1950 may be a bird of somebody’s youth', () => {
    expect(answer('1950-01-01')).toBe('1950-01-01');
  });

  it('is never suggested that is not in the calendar', () => {
    const digits = fc
      .array(fc.constantFrom(...'0123456789-/. '), { maxLength: 12 })
      .map((parts) => parts.join(''));
    fc.assert(
      fc.property(digits, (text) => {
        const read = readDate(text, 2026);
        const meant = 'day' in read ? [] : String(read.args.suggestion).match(/\d{4}-\d{2}-\d{2}/g);
        for (const date of meant ?? []) expect(parseDay(date)).not.toBeNull();
      }),
    );
  });
});

describe('when a bird hatched of which no day is known', () => {
  it.each([
    ['May 2024', '2024-05'],
    ['ring of 2024', '2024'],
    ['spring 2024?', '2024'],
    ['maybe 2024', '2024'],
    ['about Sept. 2023', '2023-09'],
    ['17.5.2024', '2024-05-17'],
    ['2023 or 2024', ''],
    ['long ago', ''],
    ['2024-13', ''],
    ['ring 12 2024', '2024'],
    ['2024 12 birds', '2024'],
  ])('`%s` is answered with `%s`', (text, suggestion) => {
    expect(readPeriod(text)).toMatchObject({ args: { text, suggestion } });
  });
});

// As the Unicode CLDR has them, which comes with Node.
describe.each(['en', 'de', 'de-AT', 'nl', 'fr', 'es', 'it'])('the names of the months in %s', (language) => {
  const months = Array.from({ length: 12 }, (_, index) => index + 1);
  const named = (month: number, form: 'long' | 'short') =>
    new Intl.DateTimeFormat(language, { month: form, timeZone: 'UTC' })
      .format(Date.UTC(2026, month - 1, 15))
      .replace(/\.$/, '');

  it('are known in full and in short', () => {
    for (const form of ['long', 'short'] as const)
      expect(months.map((month) => monthNamed(named(month, form)))).toEqual(months);
  });
});

it('a month is not told by two letters, nor where it may be two', () => {
  expect(['ma', 'jui', 'foo', ''].map(monthNamed)).toEqual([0, 0, 0, 0]);
  expect(['MÄRZ', 'marzo', 'dez'].map(monthNamed)).toEqual([3, 3, 12]);
});

it('the day meant is the right form of what was written, or empty', () => {
  expect(
    ['2026-05-01', 'Yesterday', ' tomorrow ', '1.5.', '1. Mai', '5/6', 'soon'].map((text) =>
      dateMeant(text, parseDay('2026-05-02') as number),
    ),
  ).toEqual([
    '2026-05-01',
    '2026-05-01',
    '2026-05-03',
    '2026-05-01',
    '2026-05-01',
    '2026-05-06 or 2026-06-05',
    '',
  ]);
});

it('a word that is short for a month in another language is one where it stands with figures alone', () => {
  const meant = (text: string) => dateMeant(text, parseDay('2026-05-02') as number);
  expect(['12 set 2025', '3. ago', '2 set in the incubator', '2 weeks ago'].map(meant)).toEqual([
    '2025-09-12',
    '2026-08-03',
    '',
    '',
  ]);
  expect(['3 days ago', ' 1 day ago ', '12 days ago'].map(meant)).toEqual([
    '2026-04-29',
    '2026-05-01',
    '2026-04-20',
  ]);
  expect(['about 3 days ago', '3 days ago or so'].map(meant)).toEqual(['', '']);
});
