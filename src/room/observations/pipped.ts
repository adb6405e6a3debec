import { chooseEggs } from '../choose.ts';
import { daysToHatch, hatchRank } from '../fertility.ts';
import { eggsInReach, whyNotOpen } from '../lives.ts';
import { owner } from '../wanted.ts';
import type { Apply } from './apply.ts';

export const pipped: Apply<'pipped'> = (scene, who) => {
  const eggs = chooseEggs(scene, who, {
    did: 'pipped',
    among: eggsInReach(scene.pair),
    impossible: (egg) => whyNotOpen(egg),
    rank: (egg) => hatchRank(egg, scene.since),
    likely: (egg) => daysToHatch(egg, scene.day),
    kind: owner,
  });
  for (const egg of eggs) egg.pipped ??= scene.day;
};
