import { chooseBirds } from '../choose.ts';
import { tellAll } from '../lists.ts';
import { whyNotAlive, youngInReach } from '../lives.ts';
import type { Apply } from './apply.ts';

export const feeding: Apply<'feeding'> = (scene, value) => {
  for (const { by, who } of value) {
    const young = chooseBirds(scene, who, {
      did: 'fed',
      among: youngInReach(scene.pair),
      impossible: (bird) => whyNotAlive(bird),
    });
    tellAll(young, 'fedBy', { day: scene.day, by });
  }
};
