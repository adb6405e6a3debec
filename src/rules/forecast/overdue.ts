import type { Day, Span } from '../../days.ts';
import { shareBy } from '../../statistics/delay.ts';
import { studentTail } from '../../statistics/student.ts';
import type { Duration } from './duration.ts';

/** An egg may be called overdue when fewer than this share of such eggs hatch on that day or later. */
const RARE = 0.01;

/** Days of grace past the longest usual incubation of the clutch's last egg (common practice: 3–4 d). */
const GRACE = 4;

/**
 * Share of such eggs, of those that hatch at all, that hatch after this day.
 *
 * The spread is itself only estimated, so the tail is Student's t with the degrees of freedom that the spread rests
 * on; it is longer than the normal tail of the window and calls an egg overdue later.
 */
export function shareHatchingAfter(duration: Duration, start: Span, day: Day): number {
  return shareBy(duration, start, day, (deviations) => studentTail(deviations, duration.degrees));
}

/**
 * The first day on which an egg counts as overdue: fewer than 1 in 100 such eggs hatch on it or later, and the clutch's last
 * egg is 4 days past the longest usual incubation, both counted from the latest its sitting may have begun; and never
 * by the day on which the slowest egg of this room was out.
 * Overdue asks for a look, never for an egg to be destroyed.
 *
 * @param start the egg's own clock
 * @param last the clock of the clutch's last egg
 */
export function overdueFrom(duration: Duration, start: Span, last: Span): Day {
  const latest = { from: start.to, to: start.to };
  const slowest = start.to + Math.floor(duration.longest);
  let day = Math.max(Math.ceil(last.to + duration.range.high + GRACE), slowest + 1);
  while (shareHatchingAfter(duration, latest, day - 1) >= RARE) day++;
  return day;
}
