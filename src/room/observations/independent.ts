import type { Day } from '../../days.ts';
import { walksOff } from '../../species/walks-off.ts';
import { chooseBirds } from '../choose.ts';
import { hatchedOn } from '../clock.ts';
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
  const birds = chooseBirds(scene, who, {
    did: 'independent',
    among: youngInReach(pair),
    impossible: (bird) =>
      whyNotAlive(bird) ??
      (bird.ref === null ? 'it depends on nobody' : null) ??
      (bird.independent !== null ? 'it is independent already' : null) ??
      (isOut(bird) || mustHaveLeft(bird, day) ? null : 'it has not left the nest'),
    ...whoeverRears,
    before: isOut,
    past: (bird) => !isOut(bird),
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
