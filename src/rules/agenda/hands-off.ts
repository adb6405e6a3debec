import type { Day } from '../../days.ts';
import { hatchedOn } from '../../room/clock.ts';
import type { Brood } from '../brood.ts';

/** Days before the earliest fledging from which a nest is left alone: young explode from a nest opened late. */
const BEFORE_FLEDGING = 6;

/**
 * Whether the nest of this brood is to be left alone on a day: around hatching, from two days before the window to
 * the day after the first hatching; and from six days before the youngest usual fledging age until the last has left.
 */
export function inHandsOffDays({ hatch, hatched, young, profile }: Brood, day: Day): boolean {
  if (hatch !== null && day >= hatch.from - 2 && day <= hatch.to + 1 && hatched.length === 0) return true;
  // The least of nobody's days is infinite: never.
  const first = Math.min(...hatched.flatMap((bird) => bird.hatched?.to ?? []));
  if (day >= first && day <= first + 1) return true;
  const fledging = profile?.fledging?.value;
  const nestlings = young.filter((bird) => bird.fledged === null && bird.hatched !== null);
  if (fledging === undefined) return false;
  const eldest = Math.min(...nestlings.map((bird) => hatchedOn(bird)?.from ?? day));
  // Where young leave early, rings still go on first.
  const ringAge = profile?.ringAge?.value.high ?? 0;
  return day >= eldest + Math.max(fledging.low - BEFORE_FLEDGING, Math.min(ringAge + 1, fledging.low - 2));
}
