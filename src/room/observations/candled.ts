import { chooseEggs, namedFirst } from '../choose.ts';
import { beginFirstClutch } from '../first-clutch.ts';
import { tellAll } from '../lists.ts';
import { eggsInReach, whyNotOpen } from '../lives.ts';
import type { Egg } from '../model.ts';
import { owner } from '../wanted.ts';
import type { Apply } from './apply.ts';

export const candled: Apply<'candled'> = (scene, value) => {
  const told = new Set<Egg>();
  beginFirstClutch(scene, value);
  for (const { what, who } of namedFirst(value)) {
    const eggs = chooseEggs(scene, who, {
      did: `candled ${what}`,
      among: eggsInReach(scene.pair),
      impossible: (egg) => whyNotOpen(egg),
      told,
      kind: owner,
      rank: (egg) => (egg.lamp.at(-1)?.saw === what ? 0 : egg.lamp.length === 0 ? 1 : 2),
    });
    tellAll(eggs, 'lamp', { day: scene.day, saw: what });
  }
};
