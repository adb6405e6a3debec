import { livingParents } from '../family.ts';
import { isLeftBehind, isStillNestling } from '../left-behind.ts';
import { joined } from '../lists.ts';
import { hostClutch, openClutch } from '../lives.ts';
import type { Clutch, Egg } from '../model.ts';
import { isInNest, type Scene } from '../scene.ts';
import { addUnseenEgg } from '../unseen.ts';
import type { Apply } from './apply.ts';

export const sitting: Apply<'sitting'> = (scene, by, at) => {
  if (by === 'cock' || by === 'hen' || by === 'both') livingParents(scene, by, { at, did: 'sat' });
  const clutch = sittingClutch(scene, by === 'off');
  if (clutch !== null)
    clutch.sittings = joined(clutch.sittings, { day: scene.day, time: scene.entry.time, by });
};

/**
 * The clutch that is sat on: pinned, the youngest with eggs in the nest it names, or one nobody saw laid. Nobody sits on eggs
 * that a brood left behind.
 */
function sittingClutch(scene: Scene, off: boolean): Clutch | null {
  const { pair, day } = scene;
  if (scene.pinned !== null) return scene.pinned;
  const isSatOn = (egg: Egg) => egg.fate === null && !isLeftBehind(egg, day);
  const open = pair.clutches.findLast((clutch) => isInNest(scene, clutch) && clutch.eggs.some(isSatOn));
  if (open !== undefined || scene.entry.clutch === null) {
    const inUse = [...pair.here.eggs, ...pair.here.young].some(
      (one) => ('laid' in one ? isSatOn(one) : isStillNestling(one, day)) && isInNest(scene, hostClutch(one)),
    );
    if (open !== undefined || off || inUse) return open ?? null;
  }
  const clutch = openClutch(scene, { counted: false });
  addUnseenEgg(clutch, day);
  return clutch;
}
