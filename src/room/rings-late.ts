import { type Day, formatDay, type Span } from '../days.ts';
import type { Finding, Place } from '../findings/finding.ts';
import { hatchedOn } from './clock.ts';
import type { Bird, Chick } from './model.ts';
import type { Fold } from './scene.ts';

/** A ring put on when the bird was older than a closed ring takes. */
export interface RingLate {
  bird: Chick;
  day: Day;
  at: Place;
}

/** Days past the usual age in which the ring may still pass the toes of a slow chick (common practice). */
const SLOW = 2;

interface Late {
  /** How old it was at the least, days. */
  age: number;
  /** The days on which a closed ring went on. */
  fits: Span;
}

/** How late it was for a closed ring, whenever the bird can have hatched; null where it was not, or nobody knows. */
function lateBy(bird: Bird, day: Day): Late | null {
  const hatched = hatchedOn(bird);
  const usual = bird.clutch?.pair.profile?.ringAge?.value;
  if (hatched === null || usual === undefined || day - hatched.to <= usual.high + SLOW) return null;
  return {
    age: day - hatched.to,
    fits: { from: hatched.from + Math.floor(usual.low), to: hatched.to + Math.ceil(usual.high) },
  };
}

/** Whether a bird is too old on this day for a closed ring, as far as is known. */
export function isTooOldForRing(bird: Bird, day: Day): bird is Chick {
  return lateBy(bird, day) !== null;
}

/** Closed rings that cannot have gone on; where the clutch is to get none, an open or split ring is meant. */
export function lateRings({ ringsLate }: Fold): Finding[] {
  return ringsLate.flatMap(({ bird, day, at }): Finding[] => {
    // What was written later may tell its age better.
    const late = lateBy(bird, day);
    if (late === null || bird.clutch.skipped.some(({ task }) => task === 'ring')) return [];
    const { age, fits } = late;
    const args = { who: bird.ref, age, from: formatDay(fits.from), to: formatDay(fits.to) };
    return [{ code: 'ringed-late', at, args }];
  });
}
