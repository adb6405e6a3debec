import type { Day } from '../days.ts';
import { walksOff } from '../species/walks-off.ts';
import { hatchedOn } from './clock.ts';
import { fledging, incubation, independence, isDependent, isFedByHand, longPast } from './lives.ts';
import type { Bird, Clutch, Egg, Seen } from './model.ts';

/** Days past its longest time after which a chick is taken to have left the nest, or to feed itself, though nobody wrote so. */
const UNWRITTEN = 7;

/** Days in which the eggs of a clutch hatch, and its young leave the nest, and more. */
export const BROOD_APART = 7;

/** Whether it lies in the nest still, as far as nobody wrote otherwise. */
export function isStillNestling({ fledged, hatched, clutch }: Bird, day: Day): boolean {
  if (fledged !== null) return fledged.day > day;
  return hatched === null || day - hatched.to <= fledging(clutch?.pair.profile ?? null).high + UNWRITTEN;
}

/** Whether nobody wrote that it left the nest, and it can be old enough to feed itself: by then its kind is out. */
export function mustHaveLeft(bird: Bird, day: Day): boolean {
  const hatched = hatchedOn(bird);
  const profile = bird.clutch?.pair.profile ?? null;
  return hatched !== null && day - hatched.to >= Math.max(fledging(profile).high, independence(profile).low);
}

/** When it can have left what others call the nest: as it hatched, or nobody knows on which day until now. */
export function outBy(bird: Bird, day: Day): Seen {
  const profile = bird.clutch?.pair.profile ?? null;
  const { low, high } = fledging(profile);
  const hatched = hatchedOn(bird) ?? { from: day, to: day };
  const to = isFedByHand(bird) && !walksOff(profile) ? day : Math.min(hatched.to + high, day);
  return { span: { from: Math.min(hatched.from + low, to), to }, day: to };
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
  return longPast(egg, day) || wasLeftBehind(egg, day - BROOD_APART);
}

/** Days after which a hen that lost her eggs or young can have laid again, and not sooner as a rule (common practice: about a week). */
export const LAYS_AGAIN = 5;

/** Whether what lies in the nest by then is no longer this egg, nor a chick of it: the hen may have laid again. */
export function isOver(egg: Egg, day: Day): boolean {
  const { fate } = egg;
  if (longPast(egg, day)) return true;
  if (fate?.kind !== 'hatched') return isOutSinceLong(egg, day) || wasLeftBehind(egg, day);
  // Whatever became of it since it flew, it is in nobody's way.
  return isOutSinceLong(fate.bird, day) || !isStillNestling(fate.bird, day);
}

function wasLeftBehind(egg: Egg, day: Day): boolean {
  return hasFlown(egg.clutch, day) || wasLeftByKeeper(egg, day);
}

/**
 * Whether any of its young have left the nest, as a brood does. Whoever is out of the nest within days of hatching fell out
 * of it or walks off, and leaves nobody behind yet.
 */
export function hasFlown({ chicks }: Clutch, day: Day): boolean {
  return chicks.some((chick) => !isStillNestling(chick, day) && day - chick.hatched.to > BROOD_APART);
}

/** Whether the last of these clutches may still hatch more than was counted. */
export function hasClutchInCourse(clutches: readonly Clutch[], day: Day): boolean {
  const last = clutches.at(-1);
  if (last === undefined || hasFlown(last, day)) return false;
  return day - last.opened <= incubation(last.pair.profile).high + 14;
}

/**
 * Whether its keeper took the young from beside it, to other parents or into the hand, and left it, though it should have
 * hatched. Where young only died, others may have hatched that nobody saw, and be brooded.
 */
function wasLeftByKeeper({ clutch, laid }: Egg, day: Day): boolean {
  const { chicks, pair } = clutch;
  if (day - laid.to <= incubation(pair.profile).high + BROOD_APART) return false;
  const wasTaken = ({ fate, stays }: Bird) => fate === null && stays[0]?.nest === pair;
  return chicks.some(wasTaken) && chicks.every((chick) => isOutSinceLong(chick, day));
}

/** Whether it ended, or was taken out of its own nest, so long ago that its hen can have laid again. */
function isOutSinceLong(one: Egg | Bird, day: Day): boolean {
  const out = one.fate?.day ?? takenOn(one);
  return out !== null && day - out >= LAYS_AGAIN;
}

/** The day on which it was taken out of its own nest, wherever it went from there; null while it is in it. */
function takenOn(one: Egg | Bird): Day | null {
  const stays =
    'laid' in one
      ? one.places.map(({ from, place }) => ({ from, nest: place.kind === 'nest' ? place.pair : null }))
      : one.stays;
  const last = stays.findLastIndex(({ nest }) => nest === one.clutch?.pair);
  return stays[last + 1]?.from ?? null;
}

/** Whether it may be one of those that are heard to beg: nobody begs for long after its kind feeds itself. */
export function mayBeg({ hatched, clutch }: Bird, day: Day): boolean {
  return hatched === null || day - hatched.to <= independence(clutch?.pair.profile ?? null).high + UNWRITTEN;
}

/** Whether a young bird has to be fed: by its age, or as it was seen fed or leaving the nest of late. */
export function isFed(bird: Bird, day: Day): boolean {
  const { fedBy, crops, fledged } = bird;
  const seen = [fedBy.at(-1)?.day, crops.at(-1)?.day, fledged?.day];
  return (
    isDependent(bird) && (mayBeg(bird, day) || seen.some((on) => on !== undefined && day - on <= LATELY))
  );
}

/** Days for which who was seen to be fed is still taken to be. */
const LATELY = 7;
