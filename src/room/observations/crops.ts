import { chooseBirds, namedFirst } from '../choose.ts';
import { tellAll } from '../lists.ts';
import { whyNotAlive, youngInReach } from '../lives.ts';
import type { Bird } from '../model.ts';
import { notFledged } from '../wanted.ts';
import type { Apply } from './apply.ts';

export const crops: Apply<'crops'> = (scene, value) => {
  const told = new Set<Bird>();
  for (const { what, who } of namedFirst(value)) {
    const young = chooseBirds(scene, who, {
      did: `looked at (crop ${what})`,
      inHand: true,
      among: youngInReach(scene.pair),
      impossible: (bird) => whyNotAlive(bird),
      told,
      before: notFledged,
    });
    tellAll(young, 'crops', { day: scene.day, crop: what });
  }
};
