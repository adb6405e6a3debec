import {
  calendarDay,
  civilDate,
  type Day,
  dayOf,
  daysInMonth,
  formatDay,
  parseDay,
  type Span,
} from '../../days.ts';
import type { FindingCode } from '../../findings/codes.ts';
import type { FindingArgs } from '../../findings/finding.ts';

/** The months in German, Dutch, French, Spanish and Italian, with what is no beginning of them but short for them. */
const ELSEWHERE = [
  'januar jänner januari janvier enero gennaio',
  'februar feber februari février febrero febbraio',
  'märz maart mrt mars marzo',
  'april avril abril aprile',
  'mai mei mayo maggio',
  'juni juin junio giugno',
  'juli juillet julio luglio',
  'august augustus août agosto',
  'september septembre septiembre setiembre settembre',
  'oktober octobre octubre ottobre',
  'november novembre noviembre',
  'dezember december décembre diciembre dicembre',
].map((names) => plainLetters(names).split(' '));

/** A day, or why the text names none. */
export type DateReading = { day: Day } | { code: FindingCode; args: FindingArgs };

/** Before that nobody wrote the journals of birds that are alive now: such a year is a slip of the finger. */
const EARLIEST_YEAR = 1950;

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/**
 * Reads `YYYY-MM-DD`. Other ways to write a date are not read but recognised, and answered with the right form.
 *
 * @param near a year that other dates of the file have, for dates without one
 */
export function readDate(written: string, near: number | null = null): DateReading {
  const text = written.trim();
  const day = parseDay(text);
  if (day === null)
    return impossible(text) ?? { code: 'date-shape', args: { text, suggestion: suggestions(text, near) } };
  const { year, month, date } = civilDate(day);
  if (year >= EARLIEST_YEAR) return { day };
  const suggestion = near === null ? null : valid(near, month, date);
  return { code: 'early-date', args: { text, suggestion: suggestion ?? '' } };
}

/**
 * The day that a text names, in the right form; two joined by `or` where it may be either, and empty where it is none.
 *
 * @param on the day on which it is said: what `yesterday` is counted from, and the year of a date without one
 */
export function dateMeant(written: string, on: Day): string {
  const named = { yesterday: on - 1, today: on, tomorrow: on + 1 }[written.trim().toLowerCase()];
  if (named !== undefined) return formatDay(named);
  const [, days] = /^(\d{1,2}) days? ago$/i.exec(written.trim()) ?? [];
  if (days !== undefined) return formatDay(on - Number(days));
  const read = readDate(written, civilDate(on).year);
  return 'day' in read ? formatDay(read.day) : String(read.args.suggestion);
}

/** Reads `YYYY-MM-DD`, `YYYY-MM` or `YYYY` as the days that it can mean. What else names a month or a year is answered so. */
export function readPeriod(written: string): Span | Exclude<DateReading, { day: Day }> {
  const text = written.trim();
  const [, year, month] = /^(\d{4})(?:-(\d\d))?$/.exec(text) ?? [];
  const first = year === undefined ? text : `${year}-${month ?? '01'}-01`;
  const read = readDate(first);
  if ('day' in read) {
    if (year === undefined) return { from: read.day, to: read.day };
    const last = month === undefined ? 12 : Number(month);
    return { from: read.day, to: dayOf(Number(year), last, daysInMonth(Number(year), last)) };
  }
  const { code, args } = read;
  const suggestion = year === undefined ? args.suggestion || periodIn(text) : '';
  return { code, args: { ...args, text, suggestion } };
}

/** The month or the year of `May 2024`, `spring 2024` or `about 2024`; empty where there is none. */
function periodIn(text: string): string {
  const [year, ...others] = text.match(/\b(?:19|20)\d\d\b/g) ?? [];
  if (year === undefined || others.length > 0) return '';
  const [, first, last] = /^(?:(\d{1,2})[-/. ]+)?\d{4}(?:[-/. ]+(\d{1,2}))?$/.exec(text) ?? [];
  const figure = Number(first ?? last);
  // `2024/25` are two years.
  const month = figure <= 12 ? figure : monthIn(text);
  return month === 0 ? year : `${year}-${String(month).padStart(2, '0')}`;
}

function impossible(text: string): DateReading | null {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (match === null) return null;
  const [year, month, date] = match.slice(1).map(Number) as [number, number, number];
  const name = MONTHS[month - 1];
  if (name === undefined) {
    return {
      code: 'impossible-date',
      args: { text, month: '', days: 0, suggestion: valid(year, date, month) ?? '' },
    };
  }
  const days = daysInMonth(year, month);
  const suggestion = formatDay(dayOf(year, month, Math.max(1, Math.min(date, days))));
  return { code: 'impossible-date', args: { text, month: `${name} ${year}`, days, suggestion } };
}

/** The right form of a date written another way: one, or two joined by `or`, or empty where it is no date. */
function suggestions(text: string, near: number | null): string {
  const found = readings(text, near).filter((date) => date !== null);
  return [...new Set(found)].join(' or ');
}

function readings(written: string, near: number | null): (string | null)[] {
  // A phone makes long dashes of short ones.
  const text = written.replace(/[\u2010-\u2015\u2212]/g, '-');
  const clock = /^(\d{4}-\d{2}-\d{2})[T ](\d{2}:\d{2})/.exec(text);
  if (clock !== null)
    return [parseDay(clock[1] as string) === null ? null : `${clock[1]}, time: ${clock[2]}`];
  const compact = /^(\d{4})(\d{2})(\d{2})$/.exec(text);
  const yearFirst = compact ?? /^(\d{4})[-/. ](\d{1,2})[-/. ](\d{1,2})$/.exec(text);
  if (yearFirst !== null) {
    const [year, month, date] = yearFirst.slice(1).map(Number) as [number, number, number];
    return [valid(year, month, date) ?? valid(year, date, month)];
  }
  const yearLast = /^(\d{1,2})([-/. ]+)(\d{1,2})\2(\d{4}|\d{2})$/.exec(text);
  if (yearLast !== null) {
    // `24-03-27` among entries of 2024: the year stands first as in the right form, only short.
    const [first, middle, last] = [yearLast[1], yearLast[3], yearLast[4]] as [string, string, string];
    if (yearLast[2] === '-' && last.length === 2 && near !== null && Number(first) === near % 100)
      return [valid(near, Number(middle), Number(last))];
    const [one, two, year] = [Number(first), Number(middle), wholeYear(last)];
    // With dots the day stands first wherever dates are written so; with strokes it depends on the country.
    const dotted = yearLast[2] === '.' || yearLast[2] === '. ';
    return [valid(year, two, one), dotted && two <= 12 ? null : valid(year, one, two)];
  }
  const noYear = /^(\d{1,2})[-/](\d{1,2})$/.exec(text);
  if (noYear !== null) {
    const [one, two] = [Number(noYear[1]), Number(noYear[2])];
    const eitherWay = text.includes('/');
    return near === null ? [] : [valid(near, one, two), eitherWay ? valid(near, two, one) : null];
  }
  const dotted = /^(\d{1,2})\. ?(\d{1,2})\.?$/.exec(text);
  if (dotted !== null) return [near === null ? null : valid(near, Number(dotted[2]), Number(dotted[1]))];
  return [inWords(text, near)];
}

/** `1 March 2026`, `March 1, 2026`, `1st Mar`. */
function inWords(text: string, near: number | null): string | null {
  const month = monthIn(text);
  const numbers = text.match(/\d+/g) ?? [];
  const date = numbers.find((number) => number.length <= 2);
  const year = numbers.find((number) => number.length === 4);
  if (date === undefined || numbers.length > 2 || (year === undefined && near === null)) return null;
  return valid(year === undefined ? (near as number) : Number(year), month, Number(date));
}

/**
 * The month (1–12) that one of the words names, in full or by its first letters, three at least; 0 where none does. In another
 * language it is the only word: `ago` and `set` are short for months as well.
 */
function monthIn(text: string): number {
  const words = plainLetters(text).match(/[a-z]{3,}/g) ?? [];
  const [only = ''] = words;
  return words.length === 1 ? monthNamed(only) : (words.map(inEnglish).find((month) => month > 0) ?? 0);
}

/**
 * The month (1–12) that a word names, in full or by its first letters, in English or another language of keepers nearby;
 * 0 where it names none, or may be two, as `jui` in French.
 */
export function monthNamed(word: string): number {
  const plain = plainLetters(word);
  if (plain.length < 3) return 0;
  const english = inEnglish(plain);
  if (english > 0) return english;
  const found = ELSEWHERE.flatMap((names, index) =>
    names.some((name) => name.startsWith(plain)) ? [index + 1] : [],
  );
  return found.length === 1 ? (found[0] as number) : 0;
}

function inEnglish(plain: string): number {
  return MONTHS.findIndex((name) => name.toLowerCase().startsWith(plain)) + 1;
}

/** Small letters without accents. */
export function plainLetters(text: string): string {
  return text.toLowerCase().normalize('NFD').replace(/\p{M}/gu, '');
}

/** Two figures are 1969 to 2068, as POSIX has it (IEEE Std 1003.1, strptime, %y). */
export function wholeYear(digits: string): number {
  const year = Number(digits);
  if (digits.length > 2) return year;
  return year >= 69 ? 1900 + year : 2000 + year;
}

function valid(year: number, month: number, date: number): string | null {
  const day = calendarDay(year, month, date);
  return day === null ? null : formatDay(day);
}
