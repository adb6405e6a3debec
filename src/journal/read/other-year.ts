import { calendarDay, civilDate, type Day, formatDay } from '../../days.ts';
import type { Finding } from '../../findings/finding.ts';
import type { Dated } from '../future.ts';

/** Days by which an entry must be older than the one above it before its year is doubted. */
const LONG_AGO = 300;
/** With the year put right it is this many days before the entry above at most, or after it. */
const BEFORE = 7;
const AFTER = 60;

/**
 * A hint for each entry that was written under one of a later year although its day and month follow upon it: in January
 * one still writes the year that has just ended, and such an entry would count as a clutch of a year ago. Only in a
 * log that goes on from above to below; one that was written the other way round steps back from year to year.
 *
 * @param latest what is dated later is itself in error, and no measure for those around it
 */
export function otherYears(entries: Iterable<Dated>, latest: Day): Finding[] {
  const findings: Finding[] = [];
  let steps = 0;
  let before: Day | undefined;
  let above: Day | undefined;
  for (const entry of entries) {
    const { date } = entry;
    if (date > latest) continue;
    steps += Math.sign(date - (before ?? date));
    before = date;
    const meant = above === undefined || above - date < LONG_AGO ? null : inYearsAfter(date, above);
    if (meant === null || above === undefined) {
      above = date;
      continue;
    }
    const args = { date: formatDay(date), above: formatDay(above), suggestion: formatDay(meant) };
    findings.push({ code: 'other-year', at: entry.dateAt, args });
    above = meant;
  }
  return steps < 0 ? [] : findings;
}

/** The same day and month of a later year, if that follows upon the entry above. */
function inYearsAfter(date: Day, above: Day): Day | null {
  const { month, date: dayOfMonth } = civilDate(date);
  const { year } = civilDate(above);
  const days = [year, year + 1].flatMap((one) => calendarDay(one, month, dayOfMonth) ?? []);
  return days.find((day) => day >= above - BEFORE && day <= above + AFTER) ?? null;
}
