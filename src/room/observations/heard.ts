import { clearRank } from '../fertility.ts';
import { addUnseenEgg, hatch, incubation, openClutch } from '../lives.ts';
import type { Egg } from '../model.ts';
import type { Scene } from '../scene.ts';
import type { Apply } from './apply.ts';

/** Somebody begs: at least one chick is there, hatched on a day nobody saw. */
export const heard: Apply<'heard'> = (scene) => {
  const { pair, day } = scene;
  if ([...pair.here.young].some((young) => young.fledged === null)) return;
  const egg = likeliestEgg(scene);
  const earliest = Math.max(egg.laid.from + Math.ceil(incubation(pair.profile).low / 2), scene.since.from);
  const chick = hatch(scene.fold, egg, { from: Math.min(day, earliest), to: day }, day);
  chick.placeholder = true;
  egg.clutch.chicksCounted = false;
};

function likeliestEgg(scene: Scene): Egg {
  const eggs = [...scene.pair.here.eggs].filter(
    (egg) => scene.pinned === null || egg.clutch === scene.pinned,
  );
  eggs.sort((a, b) => clearRank(a) - clearRank(b) || a.number - b.number);
  return eggs[0] ?? addUnseenEgg(scene.pinned ?? openClutch(scene, { counted: false }), scene.day);
}
