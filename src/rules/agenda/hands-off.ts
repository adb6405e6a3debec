import type { Day, Span } from '../../days.ts';
import { hatchedOn } from '../../room/clock.ts';
import { isStillNestling } from '../../room/left-behind.ts';
import type { Range } from '../../species/profile.ts';
import { walksOff } from '../../species/walks-off.ts';
import { type Brood, profileIn } from '../brood.ts';

/** Days before the hatch window from which a nest is left alone. */
export const BEFORE_HATCH = 2;

/** Days before the earliest fledging from which a nest is left alone: young explode from a nest opened late. */
const BEFORE_FLEDGING = 6;

/** Days before it from which nothing is reason enough. */
const LEAST_BEFORE_FLEDGING = 2;

/**
 * Whether the nest of this brood is to be left alone on a day: around hatching, from two days before the window to
 * the day after the first hatching; and from six days before the youngest usual fledging age until the last has left.
 */
export function inHandsOffDays(brood: Brood, day: Day): boolean {
  const { hatch, hatched, young } = brood;
  if (hatch !== null && day >= hatch.from - BEFORE_HATCH && day <= hatch.to + 1 && hatched.length === 0)
    return true;
  // The least of nobody's days is infinite: never.
  const first = Math.min(...hatched.map((bird) => bird.hatched.to));
  if (day >= first && day <= first + 1) return true;
  return young.some((bird) => {
    const profile = profileIn(brood, bird);
    const fledging = profile?.fledging?.value;
    if (!isStillNestling(bird, day) || fledging === undefined) return false;
    // No nest holds them.
    if (walksOff(profile)) return false;
    return day >= leftAloneFrom(hatchedOn(bird), fledging, profile?.ringAge?.value);
  });
}

/**
 * The day from which the nest of a chick that hatched on one of these days is left alone. Where young leave early, or can have
 * hatched days before they were found, rings still go on first.
 */
export function leftAloneFrom(hatched: Span, fledging: Range, ringAge: Range | undefined): Day {
  const ringed = hatched.to + (ringAge?.high ?? 0);
  const alone = hatched.from + fledging.low;
  return Math.max(alone - BEFORE_FLEDGING, Math.min(ringed + 1, alone - LEAST_BEFORE_FLEDGING));
}
