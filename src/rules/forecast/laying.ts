import type { Room } from '../../room/fold.ts';
import type { Clutch, Egg, Pair } from '../../room/model.ts';
import type { Range } from '../../species/profile.ts';
import { count } from '../../words.ts';
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
  const earlier = clutchesOfHen(clutch.hen, room).filter((one) => teaches(one, clutch));
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
    clutches: 1,
  };
}

/** An earlier clutch, counted and laid to its end: it was sat on. */
function teaches(one: Clutch, clutch: Clutch): boolean {
  if (one.opened >= clutch.opened || !one.counted || one.eggs.length === 0) return false;
  return one.chicks.length > 0 || one.sittings.some(({ by }) => by !== 'off');
}

/** A room's clutches are sorted by their hens once, whoever asks. */
const known = new WeakMap<readonly Pair[], ReadonlyMap<string, readonly Clutch[]>>();

/** All clutches of a hen, with whichever cock; none where several may be meant, or nobody is named. */
function clutchesOfHen(hen: Clutch['hen'], { pairs }: Room): readonly Clutch[] {
  const byHen = known.get(pairs) ?? clutchesByHen(pairs);
  known.set(pairs, byHen);
  return hen.length === 1 ? (byHen.get(hen[0] as string) ?? []) : [];
}

function clutchesByHen(pairs: readonly Pair[]): Map<string, Clutch[]> {
  const byHen = new Map<string, Clutch[]>();
  for (const clutch of pairs.flatMap(({ clutches }) => clutches)) {
    const [hen] = clutch.hen;
    if (hen === undefined || clutch.hen.length > 1) continue;
    const hers = byHen.get(hen);
    if (hers === undefined) byHen.set(hen, [clutch]);
    else hers.push(clutch);
  }
  return byHen;
}

/** What the forecast rests on: `4–5 eggs, book; 2 clutches of this hen`. */
export function layingBasis({ eggs, n }: ClutchForecast): string {
  const usual = eggs.low === eggs.high ? `${eggs.low} eggs, book` : `${eggs.low}–${eggs.high} eggs, book`;
  return n === 0 ? usual : `${usual}; ${count(n, 'clutch', 'clutches')} of this hen`;
}
