import type { Day } from '../../days.ts';
import { walksOff } from '../../species/walks-off.ts';
import { chooseBirds } from '../choose.ts';
import { hatchedOn } from '../clock.ts';
import { mayBeg } from '../left-behind.ts';
import {
  becomeIndependent,
  fledging,
  independence,
  isFedByHand,
  whyNotAlive,
  youngInReach,
} from '../lives.ts';
import type { Bird, Seen } from '../model.ts';
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
  const birds = chooseBirds(scene, who, {
    did: 'independent',
    among: youngInReach(pair),
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
  });
  for (const bird of birds) {
    bird.fledged ??= outOn(bird, day);
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

/** Days for which young go on being asked about of whom nobody wrote that they feed themselves. */
const ASKED = 60;

/** Whether it is younger than any of its kind that feeds itself, taken for as old as it can be. */
function isTooYoung(bird: Bird, day: Day): boolean {
  const hatched = hatchedOn(bird);
  return hatched !== null && day - hatched.from < independence(bird.clutch?.pair.profile ?? null).low;
}

/** Nobody wrote that it left the nest, and it can be old enough to feed itself: by then its kind is out. */
function mustHaveLeft(bird: Bird, day: Day): boolean {
  const hatched = hatchedOn(bird);
  const profile = bird.clutch?.pair.profile ?? null;
  return hatched !== null && day - hatched.to >= Math.max(fledging(profile).high, independence(profile).low);
}

/** When it can have left what others call the nest: as it hatched, or nobody knows on which day until now. */
function outOn(bird: Bird, day: Day): Seen {
  const profile = bird.clutch?.pair.profile ?? null;
  const { low, high } = fledging(profile);
  const hatched = hatchedOn(bird) ?? { from: day, to: day };
  const to = isFedByHand(bird) && !walksOff(profile) ? day : Math.min(hatched.to + high, day);
  return { span: { from: Math.min(hatched.from + low, to), to }, day: to };
}
