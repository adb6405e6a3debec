import { chooseEggs, owner } from '../choose.ts';
import { tellAll } from '../lists.ts';
import { eggsInReach, whyNotOpen } from '../lives.ts';
import type { Egg } from '../model.ts';
import type { Apply } from './apply.ts';

export const candled: Apply<'candled'> = (scene, value) => {
  const seen = new Set<Egg>();
  for (const { what, who } of value) {
    const eggs = chooseEggs(scene, who, {
      did: `candled ${what}`,
      among: eggsInReach(scene.pair),
      impossible: (egg) =>
        whyNotOpen(egg) ?? (seen.has(egg) ? 'the same look already says something else of it' : null),
      kind: owner,
      rank: (egg) => (egg.lamp.at(-1)?.saw === what ? 0 : egg.lamp.length === 0 ? 1 : 2),
    });
    for (const egg of eggs) seen.add(egg);
    tellAll(eggs, 'lamp', { day: scene.day, saw: what });
  }
};
