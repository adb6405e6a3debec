import { civilDate, type Day, dayOf, daysInMonth, formatDay } from '../days.ts';
import type { Finding, Place } from '../findings/finding.ts';

/** The day stood on, and the one on the keeper's wall. */
export interface Clock {
  day: Day;
  today: Day;
}

/**
 * The findings for entries of days that nobody has lived yet: later than the day stood on and than today. They are a
 * pass of their own, so that what is read from a file does not depend on the clock.
 */
export function futureFindings(
  entries: Iterable<{ date: Day; dateAt: Place }>,
  { day, today }: Clock,
): Finding[] {
  const latest = Math.max(day, today);
  const findings: Finding[] = [];
  for (const { date, dateAt } of entries) {
    if (date <= latest) continue;
    const args = { date: formatDay(date), today: formatDay(today), suggestion: lastSuchDay(date, latest) };
    findings.push({ code: 'future-date', at: dateAt, args });
  }
  return findings;
}

/** The same day and month in the latest year that had them by then. */
function lastSuchDay(date: Day, latest: Day): string {
  const { month, date: dayOfMonth } = civilDate(date);
  for (let { year } = civilDate(latest); ; year--) {
    if (dayOfMonth > daysInMonth(year, month)) continue;
    const found = dayOf(year, month, dayOfMonth);
    if (found <= latest) return formatDay(found);
  }
}
