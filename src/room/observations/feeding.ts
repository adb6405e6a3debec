import { chooseBirds } from '../choose.ts';
import { joined } from '../lists.ts';
import { whyNotAlive, youngInReach } from '../lives.ts';
import type { Apply } from './apply.ts';

export const feeding: Apply<'feeding'> = (scene, value) => {
  for (const { by, who } of value) {
    const young = chooseBirds(scene, who, {
      did: 'fed',
      among: youngInReach(scene.pair),
      impossible: (bird) => whyNotAlive(bird),
    });
    for (const bird of young) bird.fedBy = joined(bird.fedBy, { day: scene.day, by });
  }
};
