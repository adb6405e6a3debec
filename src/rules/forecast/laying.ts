import type { Clutch } from '../../room/model.ts';
import type { Range } from '../../species/profile.ts';
import { type Duration, learnedDuration } from './duration.ts';
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
export function completeClutch(clutch: Clutch): ClutchForecast | null {
  const { profile, clutches } = clutch.pair;
  const eggs = profile?.clutch?.value;
  const interval = profile?.layingInterval?.value;
  const first = clutch.eggs[0];
  if (eggs === undefined || interval === undefined || first === undefined || !clutch.counted) return null;
  const earlier = clutches.filter((one) => one !== clutch && isHersAndWhole(one, clutch));
  const duration = layingTime(eggs, interval, earlier);
  const window = windowOf(duration, [first.laid]);
  const soonest = clutch.eggs.at(-1)?.laid.to ?? first.laid.to;
  if (window === null) return null;
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
  const seen = earlier.map(({ eggs: laid }) => {
    const [first, last] = [laid[0]?.laid ?? { from: 0, to: 0 }, laid.at(-1)?.laid ?? { from: 0, to: 0 }];
    return { days: last.to - first.to, width: first.to - first.from + last.to - last.from };
  });
  return learnedDuration(range, seen);
}

/** A counted clutch of the same hen, laid to its end: something of it was sat on or ended. */
function isHersAndWhole(one: Clutch, clutch: Clutch): boolean {
  const sameHen = one.hen.length === 1 && one.hen[0] === clutch.hen[0] && clutch.hen.length === 1;
  return sameHen && one.counted && one.number < clutch.number && one.eggs.length > 0;
}

/** What the forecast rests on: `4–5 eggs, book; 2 clutches of this hen`. */
export function layingBasis({ eggs, n }: ClutchForecast): string {
  const usual = eggs.low === eggs.high ? `${eggs.low} eggs, book` : `${eggs.low}–${eggs.high} eggs, book`;
  return n === 0 ? usual : `${usual}; ${n} ${n === 1 ? 'clutch' : 'clutches'} of this hen`;
}
