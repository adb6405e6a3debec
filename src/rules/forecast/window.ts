import type { Day, Span } from '../../days.ts';
import { type DayDistribution, dayDistribution, quantileDay } from '../../statistics/delay.ts';
import type { Duration } from './duration.ts';

/** The days a clutch's hatching or fledging is expected to fill. */
export interface ForecastWindow {
  /** The earliest one's 10 % day. */
  from: Day;
  /** The earliest one's 50 % day. */
  likely: Day;
  /** The last one's 90 % day. */
  to: Day;
}

/** Of some windows the one that begins first, which says when to look; undefined of none. */
export function firstWindow<W extends ForecastWindow>(windows: readonly W[]): W | undefined {
  return [...windows].sort((a, b) => a.from - b.from || a.likely - b.likely)[0];
}

/**
 * Probability of each day for one egg (or chick), from its own clock.
 *
 * `start` is the calendar day on which its day 0 was, or would have been had it never been pulled; where that is not
 * known to the day, each day of the span is equally likely. Never conditioned on "not yet": what did not happen may
 * never happen.
 */
export function forecastDay(duration: Duration, start: Span): DayDistribution {
  return dayDistribution(duration, start);
}

/**
 * The window of a clutch from the clocks of its live eggs (or chicks), each forecast by itself; null without any.
 *
 * The three days of a forecast, counted from the start's first day, depend on nothing but the start's width; most
 * eggs of a clutch share it, so they are worked out once for several.
 */
export function windowOf(duration: Duration, starts: readonly Span[]): ForecastWindow | null {
  const window: ForecastWindow = { from: Infinity, likely: Infinity, to: -Infinity };
  let width = -1;
  let early = 0;
  let middle = 0;
  let late = 0;
  for (const start of starts) {
    if (start.to - start.from !== width) {
      width = start.to - start.from;
      const fromZero = { from: 0, to: width };
      early = quantileDay(duration, fromZero, 0.1);
      middle = quantileDay(duration, fromZero, 0.5);
      late = quantileDay(duration, fromZero, 0.9);
    }
    const from = start.from + early;
    const likely = start.from + middle;
    if (from < window.from || (from === window.from && likely < window.likely)) {
      window.from = from;
      window.likely = likely;
    }
    window.to = Math.max(window.to, start.from + late);
  }
  return starts.length === 0 ? null : window;
}
