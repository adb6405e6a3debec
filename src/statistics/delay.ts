import type { Day, Span } from '../days.ts';
import { normalCdf, normalQuantile } from './normal.ts';

/** A time in days from a start to what follows it, normally distributed. */
export interface Delay {
  mean: number;
  variance: number;
}

/** Probabilities of consecutive days, beginning with `first`; they sum to 1. */
export interface DayDistribution {
  first: Day;
  probabilities: readonly number[];
}

/**
 * A cumulative probability that reaches q but for rounding has reached it. Symmetric delays make exact halves
 * common, and the day must not hang on the order in which such a half was summed.
 */
const ROUNDING = 1e-12;

/** Standard deviations after which what is left of a tail (1e-12) is put on the outermost day. */
const REACH = 7;

/** Probability that what follows has happened by the end of the day. */
export function probabilityBy(delay: Delay, start: Span, day: Day): number {
  return shareBy(delay, start, day, normalCdf);
}

/**
 * A share of a distribution at the end of the day, when the start is equally likely on each day of its span. A day
 * carries the probability of that day ± ½.
 *
 * @param shareAt the share by how many standard deviations the day lies beyond the mean
 */
export function shareBy(
  { mean, variance }: Delay,
  start: Span,
  day: Day,
  shareAt: (deviations: number) => number,
): number {
  const deviation = Math.sqrt(variance);
  let sum = 0;
  for (let begun = start.from; begun <= start.to; begun++) {
    sum += shareAt((day - begun + 0.5 - mean) / deviation);
  }
  return sum / (start.to - start.from + 1);
}

/**
 * The q-day: the first day whose cumulative probability reaches q (0 < q < 1).
 *
 * It lies between the q-days of the earliest and the latest possible start, which have a closed form.
 */
export function quantileDay(delay: Delay, start: Span, q: number): Day {
  const steps = Math.ceil(delay.mean + normalQuantile(q) * Math.sqrt(delay.variance) - 0.5 - ROUNDING);
  let low = start.from + steps;
  let high = start.to + steps;
  // Halved and halved again: a slip in a year makes a start of a thousand days.
  while (low < high) {
    const day = Math.floor((low + high) / 2);
    if (probabilityBy(delay, start, day) >= q - ROUNDING) high = day;
    else low = day + 1;
  }
  return high;
}

/** The whole distribution over days of what follows an uncertain start. */
export function dayDistribution(delay: Delay, start: Span): DayDistribution {
  const reach = REACH * Math.sqrt(delay.variance) + 0.5;
  const first = Math.floor(start.from + delay.mean - reach);
  const last = Math.ceil(start.to + delay.mean + reach);
  const probabilities: number[] = [];
  let before = 0;
  for (let day = first; day < last; day++) {
    const until = probabilityBy(delay, start, day);
    probabilities.push(until - before);
    before = until;
  }
  probabilities.push(1 - before);
  return { first, probabilities };
}
