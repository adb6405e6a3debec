import type { Day } from '../../days.ts';
import { walksOff } from '../../species/walks-off.ts';
import { chooseBirds, isUncounted } from '../choose.ts';
import { hatchedOn, hatchingOf } from '../clock.ts';
import { mayBeg, mustHaveLeft, outBy } from '../left-behind.ts';
import {
  becomeIndependent,
  canHatchBy,
  fledging,
  hatch,
  independence,
  isDependent,
  isFedByHand,
  usualClutch,
  whyNotAlive,
  youngInReach,
} from '../lives.ts';
import type { Bird, Clutch } from '../model.ts';
import type { Scene } from '../scene.ts';
import { uncountedEgg } from '../unseen.ts';
import { whoeverRears } from '../wanted.ts';
import type { Apply } from './apply.ts';

export const independent: Apply<'independent'> = (scene, who) => {
  const { day, pair } = scene;
  const isOut = (bird: Bird) => bird.fledged !== null || hasNoNest(bird, day);
  // Of one of whom nobody wrote that it is out, only where that is so of its whole brood, and not of one of months ago.
  const isMeant = (bird: Bird) =>
    isOut(bird)
      ? !isTooYoung(bird, day)
      : mayBeg(bird, day - ASKED) && !bird.clutch?.chicks.some((mate) => mate.fledged !== null);
  const unseen = pair.clutches.filter((clutch) => isUnseenBrood(clutch, day));
  // As many as are told grew up there: none of another brood of which nobody wrote that it flew.
  const brood = who.kind === 'count' ? unseen.at(-1) : undefined;
  const birds = chooseBirds(scene, who, {
    did: 'independent',
    among: youngInReach(pair).filter((bird) => brood === undefined || isOut(bird) || bird.clutch === brood),
    impossible: (bird) =>
      whyNotAlive(bird) ??
      (bird.ref === null ? 'it depends on nobody' : null) ??
      (bird.independent !== null ? 'it is independent already' : null) ??
      (isOut(bird) || mustHaveLeft(bird, day) ? null : 'it has not left the nest'),
    ...whoeverRears,
    before: isMeant,
    past: (bird) => !isOut(bird) && !isMeant(bird),
    last: (bird) => isFedByHand(bird) || (isOut(bird) && isTooYoung(bird, day)),
    likely: (bird) => Number(!isOut(bird)),
    rank: (bird) => bird.hatched?.to ?? 0,
    mayHoldMore: (clutch) => clutch === brood,
    another: (clutch) => hatchWithMates(scene, clutch),
  });
  for (const bird of birds) {
    bird.fledged ??= outBy(bird, day);
    becomeIndependent(bird, { from: Math.max(scene.since.from, bird.fledged.day), to: day });
  }
};

/**
 * Nobody writes that a chick left the nest which walked off as it hatched, or lay in a box on the table: one that can be old
 * enough to feed itself has left it. Half of the usual age tells it from chicks that hatched since.
 */
function hasNoNest(bird: Bird, day: Day): boolean {
  const hatched = hatchedOn(bird);
  const profile = bird.clutch?.pair.profile ?? null;
  if (hatched === null || !(isFedByHand(bird) || walksOff(profile))) return false;
  return day - hatched.to >= Math.max(fledging(profile).low, independence(profile).low / 2);
}

/** Whether nobody counted its young, nor wrote that any left the nest, and they can be old enough to feed themselves. */
function isUnseenBrood(clutch: Clutch, day: Day): boolean {
  const { chicks } = clutch;
  return (
    isUncounted(clutch) &&
    chicks.some((bird) => isDependent(bird) && mayBeg(bird, day - ASKED)) &&
    chicks.every((bird) => bird.fledged === null && mustHaveLeft(bird, day))
  );
}

/** One more that grew up unseen with those that are known; null where there is no egg that it can have come of. */
function hatchWithMates({ fold, pair, day }: Scene, clutch: Clutch): Bird | null {
  const hatched = hatchingOf(clutch.chicks);
  const open = [...pair.here.eggs].find((egg) => egg.clutch === clutch && canHatchBy(egg, hatched.to));
  const isFull = clutch.eggs.length >= usualClutch(pair.profile).high;
  const egg = open ?? (isFull ? null : uncountedEgg(clutch, hatched.to));
  return egg === null ? null : hatch(fold, egg, hatched, day);
}

/** Days for which young go on being asked about of whom nobody wrote that they feed themselves. */
const ASKED = 60;

/** Whether it is younger than any of its kind that feeds itself, taken for as old as it can be. */
function isTooYoung(bird: Bird, day: Day): boolean {
  const hatched = hatchedOn(bird);
  return hatched !== null && day - hatched.from < independence(bird.clutch?.pair.profile ?? null).low;
}
