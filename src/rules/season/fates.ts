import type { Day } from '../../days.ts';
import { eggClock } from '../../room/clock.ts';
import { candlingDay } from '../../room/fertility.ts';
import { incubation } from '../../room/lives.ts';
import { type Bird, type Chick, type Clutch, type Egg, lastPlace } from '../../room/model.ts';

/** How a chick's youth ended. What happens to an independent bird is no longer its parents' merit or fault. */
export type YoungFate = 'independent' | 'died' | 'gone' | 'open';

export function youngFateOf({ independent, fate }: Bird): YoungFate {
  if (independent !== null) return 'independent';
  return fate?.kind ?? 'open';
}

/** Whether the egg was still there, and sat on, on the day from which the lamp can tell. */
export function reachedCandling(egg: Egg, day: Day): boolean {
  const until = egg.fate?.day ?? day;
  const from = candlingDay(egg, until);
  return from !== null && from <= until;
}

/** Days past the longest sitting, or in store, after which no chick comes of an egg any more. */
const NO_LONGER = 14;

/** Whether a chick may yet come of the egg, even if nobody believes in it: eggs without an end hold back what follows. */
export function mayStillHatch(egg: Egg, day: Day): boolean {
  return egg.fate === null && day <= mayHatchUntil(egg, day);
}

/** The last day on which a chick may come of it, or may have come unseen, as known on a day. */
export function mayHatchUntil(egg: Egg, day: Day): Day {
  const { from } = lastPlace(egg);
  const start = Math.max(eggClock(egg, day)?.start.to ?? from, from);
  return start + Math.ceil(incubation(egg.clutch.pair.profile).high) + NO_LONGER;
}

/**
 * Whether it is known how many chicks hatched. Not where they were only heard, or counted as "3 or more" with eggs
 * left, or first seen when they flew: then nobody knows who died before.
 */
export function chicksKnown({ chicks, eggs, counted, chicksCounted }: Clutch): boolean {
  if (chicks.some((bird) => bird.placeholder || seenTooLate(bird))) return false;
  return chicksCounted || !counted || eggs.every(({ fate }) => fate !== null);
}

/** First seen on the day it left the nest, though it hatched earlier. */
function seenTooLate({ firstSeen, fledged, hatched }: Chick): boolean {
  if (fledged === null) return false;
  return firstSeen >= fledged.day && fledged.day > hatched.to;
}
