import { calendarDay, civilDate, type Day, formatDay } from '../days.ts';
import type { Finding, Place } from '../findings/finding.ts';

/** The day stood on, and the one on the keeper's wall. */
export interface Clock {
  day: Day;
  today: Day;
}

/** What has a date, and where that stands. */
export interface Dated {
  date: Day;
  readonly dateAt: Place;
}

/** The last day that somebody can have lived. */
export function latestOf({ day, today }: Clock): Day {
  return Math.max(day, today);
}

/**
 * The findings for entries of days that nobody has lived yet: later than the day stood on and than today. They are a
 * pass of their own, so that what is read from a file does not depend on the clock.
 */
export function futureFindings(entries: Iterable<Dated>, clock: Clock): Finding[] {
  const { today } = clock;
  const latest = latestOf(clock);
  const future: Dated[] = [];
  let all = 0;
  for (const entry of entries) {
    all++;
    if (entry.date > latest) future.push(entry);
  }
  if (all >= A_RECORD && future.length > all / 2) return [clockBehind(future, all, today)];
  const findings: Finding[] = [];
  for (const { date, dateAt } of future) {
    const args = { date: formatDay(date), today: formatDay(today), suggestion: lastSuchDay(date, latest) };
    findings.push({ code: 'future-date', at: dateAt, args });
  }
  return findings;
}

/** From so many entries on, most of them dated later than today say more of the clock than of the entries. */
const A_RECORD = 10;

/** One finding, at the latest entry: each of a thousand entries would be told that it has not come yet. */
function clockBehind([first, ...future]: readonly Dated[], of: number, today: Day): Finding {
  const last = future.reduce((latest, one) => (one.date > latest.date ? one : latest), first as Dated);
  const args = { today: formatDay(today), later: future.length + 1, of, last: formatDay(last.date) };
  return { code: 'clock-behind', at: last.dateAt, args };
}

/** The same day and month in the latest year that had them by then. */
function lastSuchDay(date: Day, latest: Day): string {
  const { month, date: dayOfMonth } = civilDate(date);
  for (let { year } = civilDate(latest); ; year--) {
    const found = calendarDay(year, month, dayOfMonth);
    if (found !== null && found <= latest) return formatDay(found);
  }
}
