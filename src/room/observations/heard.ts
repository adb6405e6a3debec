import { likeliestToHatch } from '../fertility.ts';
import { hasClutchInCourse, isLeftBehind, isStillNestling, mayBeg } from '../left-behind.ts';
import { canHatchBy, hatch, hostClutch, isDue, openClutch } from '../lives.ts';
import { clutchesThere, isInNest, means, meansNone, refuse } from '../scene.ts';
import { addUnseenEgg, ageWhenFound } from '../unseen.ts';
import type { Apply } from './apply.ts';
import { tooSoon } from './hatched.ts';

/**
 * Somebody begs: at least one chick is there, hatched on a day nobody saw; where nobody ever looked into the nest, it may
 * be as old as one that is about to leave it. Where fledglings are fed and no egg is due, it is they who beg.
 */
export const heard: Apply<'heard'> = (scene, _text, at) => {
  const { pair, day, pinned } = scene;
  const begging = [...pair.here.young].filter(
    (young) => isInNest(scene, hostClutch(young)) && mayBeg(young, day),
  );
  if (begging.some((young) => isStillNestling(young, day))) return;
  if (meansNone(scene) && hasClutchInCourse(clutchesThere(scene), day)) return;
  const eggs = [...pair.here.eggs].filter((egg) => means(scene, hostClutch(egg)) && !isLeftBehind(egg, day));
  const ripe = eggs.filter((egg) => (begging.length > 0 ? isDue(egg, day) : canHatchBy(egg, day)));
  const age = ageWhenFound(scene);
  ripe.sort(likeliestToHatch({ from: day - age, to: day }));
  if (ripe.length === 0 && begging.length > 0) return;
  const [fresh] = eggs;
  if (ripe.length === 0 && fresh !== undefined) {
    const why = tooSoon(scene, fresh);
    if (why !== null) refuse(scene, at, why, { who: fresh.ref, did: 'hatched' });
    return;
  }
  const egg = ripe[0] ?? addUnseenEgg(pinned ?? openClutch(scene, { counted: false }), day, age);
  const chick = hatch(scene.fold, egg, { from: day - age, to: day }, day);
  chick.placeholder = true;
  egg.clutch.chicksCounted = false;
};
