import type { Room } from '../../room/fold.ts';
import type { Clutch, Egg } from '../../room/model.ts';
import type { Range } from '../../species/profile.ts';
import { count, fromTo } from '../../words.ts';
import { clutchesOfHen } from '../hen-year.ts';
import { birdsByName, onlyOf } from '../stock/names.ts';
import { type Duration, learnedDuration, type ObservedDuration } from './duration.ts';
import { type ForecastWindow, windowOf } from './window.ts';

/** When a clutch that is being laid is expected to be complete. */
export interface ClutchForecast extends ForecastWindow {
  /** Eggs usual for the species. */
  eggs: Range;
  /** Clutches of this hen that it has learned from. */
  n: number;
}

/**
 * The days on which the last egg of a clutch is expected: the profile's clutch size and laying interval, sharpened by
 * how long this hen took for her earlier clutches, in the same way as other durations. Null where the profile knows
 * neither, or nobody counted.
 */
export function completeClutch(clutch: Clutch, room: Room): ClutchForecast | null {
  const { profile } = clutch.pair;
  const eggs = profile?.clutch?.value;
  const interval = profile?.layingInterval?.value;
  const first = clutch.eggs[0];
  const last = clutch.eggs.at(-1);
  if (eggs === undefined || interval === undefined || first === undefined || last === undefined) return null;
  if (!clutch.counted) return null;
  const find = birdsByName(room.birds);
  const hen = onlyOf(clutch.hen, find);
  const earlier = hen === null ? [] : clutchesOfHen(room, hen, find).filter((one) => teaches(one, clutch));
  const window = windowOf(layingTime(eggs, interval, earlier), [first.laid]);
  if (window === null) return null;
  const soonest = last.laid.to;
  return {
    from: Math.max(window.from, soonest),
    likely: Math.max(window.likely, soonest),
    to: Math.max(window.to, soonest),
    eggs,
    n: earlier.length,
  };
}

/** From the first egg to the last, days: one laying interval less than there are eggs. */
function layingTime(eggs: Range, interval: Range, earlier: readonly Clutch[]): Duration {
  const range = {
    low: Math.max(0, eggs.low - 1) * interval.low,
    high: Math.max(0, eggs.high - 1) * interval.high,
  };
  return learnedDuration(range, earlier.map(laidIn));
}

/** Days between the first and the last egg, from the middle of the days on which each can have been laid. */
function laidIn({ eggs }: Clutch): ObservedDuration {
  const first = (eggs[0] as Egg).laid;
  const last = (eggs.at(-1) as Egg).laid;
  return {
    days: (last.from + last.to - first.from - first.to) / 2,
    width: first.to - first.from + last.to - last.from,
    sure: last.to - first.to,
    clutches: 1,
  };
}

/** An earlier clutch, counted and laid to its end: it was sat on. */
function teaches(one: Clutch, clutch: Clutch): boolean {
  if (one.opened >= clutch.opened || !one.counted) return false;
  return one.chicks.length > 0 || one.sittings.some(({ by }) => by !== 'off');
}

/** What the forecast rests on: `4–5 eggs, book; 2 clutches of this hen`. */
export function layingBasis({ eggs, n }: ClutchForecast): string {
  const usual = `${fromTo(eggs.low, eggs.high)} eggs, book`;
  return n === 0 ? usual : `${usual}; ${count(n, 'clutch', 'clutches')} of this hen`;
}
