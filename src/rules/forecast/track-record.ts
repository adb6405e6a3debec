import type { Day } from '../../days.ts';
import type { Room } from '../../room/fold.ts';
import type { Clutch } from '../../room/model.ts';
import { probabilityBy } from '../../statistics/delay.ts';
import { crpsDays } from '../../statistics/scores.ts';
import { meanOf } from '../../statistics/sums.ts';
import { durationsOfOthers } from '../durations.ts';
import { bookDuration, type Duration } from './duration.ts';
import { type DurationKind, membersOf, type OwnDuration, ownDurations } from './own-durations.ts';
import { type ForecastWindow, forecastDay, windowOf } from './window.ts';

/** One forecast of the room's past beside what happened: the first chick to hatch, or the first to leave the nest. */
export interface PastForecast extends ForecastWindow {
  kind: DurationKind;
  species: string;
  clutch: Clutch;
  /** Own clutches that the forecast had learned from: all others of the species. */
  n: number;
  happened: Day;
  /** Continuous ranked probability score, days: 0 is certain and right. */
  crps: number;
  /** Probability that the window claims. */
  claimed: number;
  /** What the profile alone would have said. */
  book: { likely: Day; crps: number };
}

/** How good the forecasts of one kind were, over several clutches. */
export interface TrackRecord {
  n: number;
  /** Days between the likely day and the real one; half of the forecasts were nearer. */
  medianError: number;
  /** Share that came inside the window, beside the share that the windows claim. */
  inside: number;
  claimed: number;
  crps: number;
  book: { medianError: number; crps: number };
}

/**
 * Every clutch of the room forecast anew from all others of its species (leave-one-out: its own outcome never
 * teaches its own forecast), beside what happened. The score is of the earliest egg or chick against the first
 * hatching or fledging, known to the day of the look that found it.
 */
export function pastForecasts(room: Room, own: readonly OwnDuration[] = ownDurations(room)): PastForecast[] {
  const others = durationsOfOthers(own);
  return own.flatMap((one) =>
    scored(one, others(one.clutch)(one.kind, one.species, one.range), bookDuration(one.range)),
  );
}

function scored(one: OwnDuration, duration: Duration, book: Duration): PastForecast[] {
  const members = membersOf(one);
  const first = members.reduce((a, b) => (b.start.from < a.start.from ? b : a)).start;
  const window = windowOf(duration, [first]);
  const bookWindow = windowOf(book, [first]);
  if (window === null || bookWindow === null) return [];
  const happened = Math.min(...members.map(({ end }) => end.to));
  return [
    {
      kind: one.kind,
      species: one.species,
      clutch: one.clutch,
      n: duration.n,
      ...window,
      happened,
      crps: crpsDays(forecastDay(duration, first), happened),
      claimed: probabilityBy(duration, first, window.to) - probabilityBy(duration, first, window.from - 1),
      book: { likely: bookWindow.likely, crps: crpsDays(forecastDay(book, first), happened) },
    },
  ];
}

/** The scores of several past forecasts together, or null without any. */
export function trackRecord(past: readonly PastForecast[]): TrackRecord | null {
  if (past.length === 0) return null;
  return {
    n: past.length,
    medianError: median(past.map(({ likely, happened }) => Math.abs(happened - likely))),
    inside: meanOf(past.map(({ from, to, happened }) => (happened >= from && happened <= to ? 1 : 0))),
    claimed: meanOf(past.map(({ claimed }) => claimed)),
    crps: meanOf(past.map(({ crps }) => crps)),
    book: {
      medianError: median(past.map(({ book, happened }) => Math.abs(happened - book.likely))),
      crps: meanOf(past.map(({ book }) => book.crps)),
    },
  };
}

function median(numbers: readonly number[]): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  const middle = sorted.length / 2;
  const [low, high] = [sorted[Math.ceil(middle) - 1] as number, sorted[Math.floor(middle)] as number];
  return (low + high) / 2;
}
