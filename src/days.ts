/**
 * Calendar days as integers: the number of days since 1970-01-01 in the proleptic Gregorian calendar.
 *
 * A day has no clock time and no zone, so adding thirteen days is adding thirteen, whatever the clocks did that
 * week. Everything inside nestlog counts in these; text and zones appear only at the edges.
 */
export type Day = number;

/** A stretch of days, both ends included: something happened on one day from `from` to `to`. */
export interface Span {
  readonly from: Day;
  readonly to: Day;
}

const DAY_TEXT = /^(\d{4})-(\d{2})-(\d{2})$/;
const MONTH_LENGTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Whether the Gregorian calendar gives this year a 29 February. */
export function isLeapYear(year: number): boolean {
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
}

/** How many days the month (1–12) of the year has. */
export function daysInMonth(year: number, month: number): number {
  return month === 2 && isLeapYear(year) ? 29 : (MONTH_LENGTHS[month - 1] as number);
}

/**
 * The day of a civil date that the calendar has; where it may have none, see {@link calendarDay}.
 *
 * Source of the arithmetic: era-based day counting over 400-year cycles of 146,097 days (the cycle's length
 * follows from the Gregorian leap rule); years start in March so that the leap day comes last.
 */
export function dayOf(year: number, month: number, date: number): Day {
  const shifted = month <= 2 ? year - 1 : year;
  const era = Math.floor(shifted / 400);
  const yearOfEra = shifted - era * 400;
  const dayOfYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + date - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * 146097 + dayOfEra - 719468;
}

/** Year, month (1–12) and date of a day: the inverse of {@link dayOf}. */
export function civilDate(day: Day): { year: number; month: number; date: number } {
  const shifted = day + 719468;
  const era = Math.floor(shifted / 146097);
  const dayOfEra = shifted - era * 146097;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36524) - Math.floor(dayOfEra / 146096)) /
      365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const monthFromMarch = Math.floor((5 * dayOfYear + 2) / 153);
  const date = dayOfYear - Math.floor((153 * monthFromMarch + 2) / 5) + 1;
  const month = monthFromMarch < 10 ? monthFromMarch + 3 : monthFromMarch - 9;
  return { year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0), month, date };
}

/** The day of a civil date, or null where the calendar has no such day. */
export function calendarDay(year: number, month: number, date: number): Day | null {
  if (month < 1 || month > 12 || date < 1 || date > daysInMonth(year, month)) return null;
  return dayOf(year, month, date);
}

/** The day that `YYYY-MM-DD` names, or null when the text is not such a date or the calendar has no such day. */
export function parseDay(text: string): Day | null {
  const match = DAY_TEXT.exec(text);
  return match === null ? null : calendarDay(Number(match[1]), Number(match[2]), Number(match[3]));
}

/** `YYYY-MM-DD` of a day. */
export function formatDay(day: Day): string {
  const { year, month, date } = civilDate(day);
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(date).padStart(2, '0')}`;
}

/** Of a month, on average; what a part of a month is reckoned by. */
export const DAYS_A_MONTH = 365.25 / 12;

/**
 * The day on which so many months are full: the same date of a later month, or its last day where that month is shorter.
 * What is left of a part of a month is rounded up to whole days.
 */
export function monthsAfter(day: Day, months: number): Day {
  const { year, month, date } = civilDate(day);
  const whole = Math.floor(months);
  const since = month - 1 + whole;
  const [inYear, inMonth] = [year + Math.floor(since / 12), (((since % 12) + 12) % 12) + 1];
  const same = dayOf(inYear, inMonth, Math.min(date, daysInMonth(inYear, inMonth)));
  return same + Math.ceil((months - whole) * DAYS_A_MONTH);
}

/** How many months are full from one day to a later one, as {@link monthsAfter} counts them. */
export function wholeMonths(from: Day, to: Day): number {
  const [first, last] = [civilDate(from), civilDate(to)];
  const months = (last.year - first.year) * 12 + last.month - first.month;
  return monthsAfter(from, months) > to ? months - 1 : months;
}

/** ISO 8601 weekday of a day: 1 is Monday, 7 is Sunday. */
export function weekday(day: Day): number {
  return ((((day + 3) % 7) + 7) % 7) + 1;
}

/** ISO 8601 week of a day: the week belongs to the year that holds its Thursday. */
export function isoWeek(day: Day): { year: number; week: number } {
  const thursday = day - weekday(day) + 4;
  const { year } = civilDate(thursday);
  return { year, week: Math.floor((thursday - dayOf(year, 1, 1)) / 7) + 1 };
}

/** The months of a year as a short date names them, in order. */
export const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** `4 Mar`: a day for a sentence, where the year goes without saying. */
export function shortDay(day: Day): string {
  const { month, date } = civilDate(day);
  return `${date} ${MONTHS[month - 1]}`;
}

/** `4 Mar 2026`: a day for a sentence that may be of another year. */
export function dayWithYear(day: Day): string {
  return `${shortDay(day)} ${civilDate(day).year}`;
}

/** `4 Mar`, or `3–4 Mar` and `28 Feb–2 Mar` where it is not known to the day. */
export function shortSpan({ from, to }: Span): string {
  if (from === to) return shortDay(from);
  const sameMonth = civilDate(from).month === civilDate(to).month && to - from < 31;
  return sameMonth ? `${civilDate(from).date}–${shortDay(to)}` : `${shortDay(from)}–${shortDay(to)}`;
}

/** All days up to one, however long ago. */
export function upTo(to: Day): Span {
  return { from: Number.NEGATIVE_INFINITY, to };
}

/** From the first to the last of some days, of which there is one at least. */
export function spanOf(days: readonly Day[]): Span {
  return { from: Math.min(...days), to: Math.max(...days) };
}

/** From the first day of all these spans to the last, of which there is one at least. */
export function hullOf(spans: readonly Span[]): Span {
  return spanOf(spans.flatMap(({ from, to }) => [from, to]));
}

/** What is left of a time when a gap is taken out of it; here `to` is the first day that no longer belongs to either. */
export function without<T extends { from: Day; to: Day }>(
  time: T,
  { from, to }: { from: Day; to: Day },
): T[] {
  return [
    { ...time, to: Math.min(time.to, from) },
    { ...time, from: Math.max(time.from, to) },
  ].filter((part) => part.from < part.to);
}

/** `5 Mar` of what is known to the day; `by 5 Mar` of what was found then, and may be older. */
export function foundWords({ from, to }: Span): string {
  return from === to ? shortDay(to) : `by ${shortDay(to)}`;
}
