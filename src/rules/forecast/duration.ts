import { middle, type Range } from '../../species/profile.ts';
import { normalUpdate } from '../../statistics/normal-update.ts';
import { spreadBeyondError } from '../../statistics/spread.ts';
import { sumBy } from '../../statistics/sums.ts';
import { count, daysRange } from '../../words.ts';

/** A length that was seen in this room. */
export interface Length {
  /** Days; the middle, where looks leave several lengths possible. */
  days: number;
  /** Longest possible length less the shortest, days: how far the looks stood apart. 0 when known to the day. */
  width: number;
  /** Days from the last day on which it can have begun to the look that found its end: so long it is sure to have taken. */
  sure: number;
}

/** The same, and how often. */
export interface ObservedDuration extends Length {
  /** How many clutches took just so long. */
  clutches: number;
}

/** How long something takes, as a distribution: sitting to hatching, hatching to fledging. Days and days². */
export interface Duration {
  /** The profile's range it began from. */
  range: Range;
  /** Own clutches it has learned from. */
  n: number;
  mean: number;
  /** Of the forecast for one egg or chick: what is unknown of the mean, and the spread about it. */
  variance: number;
  /** What is unknown of this room's mean. */
  meanVariance: number;
  /** Spread between eggs (or chicks) about this room's mean. */
  spreadVariance: number;
  /** Degrees of freedom that the spread rests on, whole: what is over is left out, so that tails are rather longer. */
  degrees: number;
  /** The longest that it is sure to have taken in this room, to the look that found its end, days; 0 without own clutches. */
  longest: number;
}

/** Standard deviations that the central 90 % of a normal distribution span, both sides together. */
const CENTRAL_90 = 3.29;

/** No profile is surer than this, whatever its range says: standard deviation, days. */
const LEAST_DEVIATION = 0.4;

/** As many own clutches the book's spread is worth when the room's own spread is averaged with it. */
const BOOK_WEIGHT = 8;

/** What the profile alone says: its range is the central 90 % of a normal distribution. */
export function bookDuration(range: Range): Duration {
  return learnedDuration(range, []);
}

/**
 * What the profile and this room's own clutches say together.
 *
 * Half of the book's variance is between rooms, half between eggs. Own clutches sharpen the room's mean
 * (normal–normal update) and the spread between eggs ({@link spreadBeyondError}: what the looks left open is no spread).
 * A length known only to lie between two looks `width` apart counts for less in both by the variance of a uniform,
 * width² / 12. Without own clutches this is exactly the book.
 */
export function learnedDuration(range: Range, observations: readonly ObservedDuration[]): Duration {
  const bookVariance = Math.max(LEAST_DEVIATION, (range.high - range.low) / CENTRAL_90) ** 2;
  const half = bookVariance / 2;
  const measured = observations.map(({ days, width, clutches }) => ({
    value: days,
    error: width ** 2 / 12,
    times: clutches,
  }));
  const spread = spreadBeyondError({ variance: half, degrees: BOOK_WEIGHT }, measured);
  const room = normalUpdate(
    { mean: middle(range), variance: half },
    // So many alike tell as much as one that is known so many times better.
    measured.map(({ value, error, times }) => ({ mean: value, variance: (spread.variance + error) / times })),
  );
  return {
    range,
    n: sumBy(observations, ({ clutches }) => clutches),
    mean: room.mean,
    variance: room.variance + spread.variance,
    meanVariance: room.variance,
    spreadVariance: spread.variance,
    degrees: Math.floor(spread.degrees),
    longest: Math.max(0, ...observations.map(({ sure }) => sure)),
  };
}

/** The central 90 % of what is expected of one egg or chick, days; of the book alone it is the profile's range. */
export function usualRange({ mean, variance }: Duration): Range {
  const half = (CENTRAL_90 / 2) * Math.sqrt(variance);
  return { low: mean - half, high: mean + half };
}

/**
 * What a forecast rests on, in words.
 *
 * @example
 * basisOf({ low: 11, high: 13 }, 0) // '11–13 d, book'
 * basisOf({ low: 12, high: 12 }, 4) // '12 d, book; 4 own clutches'
 */
export function basisOf(range: Range, n: number): string {
  const book = `${daysRange(range)}, book`;
  return n === 0 ? book : `${book}; ${count(n, 'own clutch', 'own clutches')}`;
}
