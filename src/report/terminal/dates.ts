import { DateTime } from 'luxon';
import type { Day, Span } from '../../days.ts';

const MILLISECONDS = 86_400_000;

/** English whatever the machine speaks, as the rest of the output is. */
function format(day: Day, pattern: string): string {
  return DateTime.fromMillis(day * MILLISECONDS, { zone: 'utc', locale: 'en' }).toFormat(pattern);
}

const yearOf = (day: Day) => format(day, 'yyyy');

function withYear(text: string, day: Day, standing: Day): string {
  return yearOf(day) === yearOf(standing) ? text : `${text} ${yearOf(day)}`;
}

/** `Sunday 1 March 2026`. */
export function longDate(day: Day): string {
  return format(day, 'cccc d LLLL yyyy');
}

/** `1 March 2026`. */
export function fullDate(day: Day): string {
  return format(day, 'd LLLL yyyy');
}

/** `Sun 1 Mar`, with the year where it is not the year of the day stood on. */
export function weekdayDate(day: Day, standing: Day): string {
  return withYear(format(day, 'ccc d LLL'), day, standing);
}

/** `1 Mar`, with the year where it is not the year of the day stood on. */
export function shortDate(day: Day, standing: Day): string {
  return withYear(format(day, 'd LLL'), day, standing);
}

/** `1–3 Mar`, `28 Feb–2 Mar`; where no end is known, `since 1 Mar` or `from 3 Mar on`. */
export function dateSpan(from: Day, to: Day | null, standing: Day): string {
  if (to === null) {
    const begin = shortDate(from, standing);
    return from <= standing ? `since ${begin}` : `from ${begin} on`;
  }
  if (from === to) return shortDate(from, standing);
  const end = shortDate(to, standing);
  if (yearOf(from) !== yearOf(to)) return `${format(from, 'd LLL yyyy')}–${format(to, 'd LLL yyyy')}`;
  return `${format(from, format(from, 'LLL') === format(to, 'LLL') ? 'd' : 'd LLL')}–${end}`;
}

/** Days on one of which something was: `2024`, `May 2024`, else as {@link dateSpan}. */
export function periodText({ from, to }: Span, standing: Day): string {
  const [month, year] = [format(from, 'LLL yyyy'), format(from, 'yyyy')];
  if (from !== to && isFirstOf('month', from) && isFirstOf('month', to + 1)) {
    if (month === format(to, 'LLL yyyy')) return month;
    if (isFirstOf('year', from) && isFirstOf('year', to + 1) && year === yearOf(to)) return year;
  }
  return dateSpan(from, to, standing);
}

function isFirstOf(what: 'month' | 'year', day: Day): boolean {
  return format(day, what === 'month' ? 'd' : 'o') === '1';
}

/** `today`, `tomorrow`, `yesterday`, `in 3 d`, `3 d ago`. */
export function relativeDay(day: Day, standing: Day): string {
  const ahead = day - standing;
  if (ahead === 0) return 'today';
  if (ahead === 1) return 'tomorrow';
  if (ahead === -1) return 'yesterday';
  return ahead > 0 ? `in ${ahead} d` : `${-ahead} d ago`;
}

/** `2 d late`: how long ago the last day of a window was. */
export function lateness(to: Day, standing: Day): string {
  return `${standing - to} d late`;
}
