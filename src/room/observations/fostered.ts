import type { Who } from '../../journal/grammar/who.ts';
import { chooseBirds, chooseEggs, owner, whoeverRears } from '../choose.ts';
import {
  housingOf,
  isDependent,
  isFedByHand,
  placeEgg,
  settle,
  whyNotAlive,
  whyNotOpen,
  youngInReach,
} from '../lives.ts';
import type { Bird, EggPlace } from '../model.ts';
import { report, type Scene } from '../scene.ts';
import { notBroughtToday, placeNamed } from '../where.ts';
import type { Apply } from './apply.ts';

export const fostered: Apply<'fostered'> = (scene, value) => {
  for (const { place, who } of value) {
    const to = placeNamed(scene, place);
    if (to === null) continue;
    const inHand = youngInReach(scene.pair).filter(isFedByHand);
    const home = to.kind === 'nest' && to.pair === scene.pair && who.kind !== 'refs';
    if (home && inHand.length === 0) {
      report(scene, place.at, 'fostered-to-itself', { pair: scene.pair.id });
      continue;
    }
    // Who comes home by count or as all was fed by hand.
    if (home) moveYoung(scene, who, to, inHand);
    else if (meansEggs(scene, who)) moveEggs(scene, who, to);
    else moveYoung(scene, who, to, youngInReach(scene.pair));
  }
};

/** Refs say it; a count means the eggs while there are no young in the nest, nor only young in the hand. */
function meansEggs(scene: Scene, who: Who): boolean {
  if (who.kind === 'refs') return who.refs.every((ref) => ref.form === 'egg');
  const { eggs, young } = scene.pair.here;
  return young.size === 0 && (eggs.size > 0 || youngInReach(scene.pair).length === 0);
}

function moveEggs(scene: Scene, who: Who, to: EggPlace): void {
  const eggs = chooseEggs(scene, who, {
    did: 'fostered',
    among: notBroughtToday(scene, [...scene.pair.here.eggs]),
    impossible: (egg) => whyNotOpen(egg),
    kind: owner,
  });
  for (const egg of eggs) placeEgg(egg, scene.day, homeIfOwn(egg.clutch, to));
}

function moveYoung(scene: Scene, who: Who, to: EggPlace, among: readonly Bird[]): void {
  const young = chooseBirds(scene, who, {
    did: 'fostered',
    among: notBroughtToday(scene, among),
    impossible: (bird) =>
      whyNotAlive(bird) ??
      (isDependent(bird) ? null : bird.ref === null ? 'it is no chick' : 'it feeds itself'),
    // A pair may be given those from the nest as well as those from the hand.
    ...whoeverRears,
    past: (bird) => to.kind === 'hand' && isFedByHand(bird),
  });
  for (const bird of young) {
    if (to.kind === 'hand' && isFedByHand(bird) && housingOf(bird) === 'hand') continue;
    const place = bird.clutch === null ? to : homeIfOwn(bird.clutch, to);
    if (place.kind === 'nest') settle(bird, scene.day, place.pair.housing, place.pair, place.clutch);
    else settle(bird, scene.day, place.kind, null, bird.clutch);
  }
}

/** Whoever comes home lives with its own clutch again. */
function homeIfOwn(clutch: NonNullable<Scene['pinned']>, to: EggPlace): EggPlace {
  return to.kind === 'nest' && to.pair === clutch.pair ? { ...to, clutch } : to;
}
