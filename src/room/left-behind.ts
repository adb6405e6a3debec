import type { Day } from '../days.ts';
import { fledging, independence, longPast } from './lives.ts';
import type { Bird, Egg } from './model.ts';

/** Days past its longest time after which a chick is taken to have left the nest, or to feed itself, though nobody wrote so. */
const UNWRITTEN = 7;

/** Days in which the eggs of a clutch hatch, and its young leave the nest, and more. */
const HATCHING = 7;

/** Whether it lies in the nest still, as far as nobody wrote otherwise. */
export function isStillNestling({ fledged, hatched, clutch }: Bird, day: Day): boolean {
  if (fledged !== null) return fledged.day > day;
  return hatched === null || day - hatched.to <= fledging(clutch?.pair.profile ?? null).high + UNWRITTEN;
}

/** Whether nobody waits for it any more: it has lain for months, or a brood of its clutch has left it behind. */
export function isLeftBehind(egg: Egg, day: Day): boolean {
  return longPast(egg, day) || wasLeftBehind(egg, day);
}

/**
 * Whether no young that are found in the nest came of it. Those that nobody counted leave the nest within days of the first:
 * until then it may be that one of them came of it weeks ago.
 */
export function isOutOfQuestion(egg: Egg, day: Day): boolean {
  return longPast(egg, day) || wasLeftBehind(egg, day - HATCHING);
}

/** Days after which a hen that lost her eggs or young can have laid again, and not sooner as a rule (common practice: about a week). */
const LAYS_AGAIN = 5;

/** Whether what lies in the nest by then is no longer this egg, nor a chick of it: the hen may have laid again. */
export function isOver(egg: Egg, day: Day): boolean {
  const { fate } = egg;
  if (longPast(egg, day)) return true;
  const isSinceLong = (end: Day) => day - end >= LAYS_AGAIN;
  if (fate?.kind === 'hatched') {
    const { bird } = fate;
    return bird.fate === null ? !isStillNestling(bird, day) : isSinceLong(bird.fate.day);
  }
  if (fate !== null) return isSinceLong(fate.day);
  const away = takenOn(egg);
  return wasLeftBehind(egg, day) || (away !== null && isSinceLong(away));
}

/** The day on which it was taken out of its own nest, wherever it went from there; null while it is in it. */
function takenOn({ places, clutch }: Egg): Day | null {
  const last = places.findLastIndex(({ place }) => place.kind === 'nest' && place.pair === clutch.pair);
  return places[last + 1]?.from ?? null;
}

function wasLeftBehind({ clutch }: Egg, day: Day): boolean {
  // Whoever is out of the nest within days of hatching fell out of it or walks off, and leaves nobody behind yet.
  const flew = (chick: Bird) =>
    !isStillNestling(chick, day) && (chick.hatched === null || day - chick.hatched.to > HATCHING);
  return clutch.chicks.some(flew);
}

/** Whether it may be one of those that are heard to beg: nobody begs for long after its kind feeds itself. */
export function mayBeg({ hatched, clutch }: Bird, day: Day): boolean {
  return hatched === null || day - hatched.to <= independence(clutch?.pair.profile ?? null).high + UNWRITTEN;
}
