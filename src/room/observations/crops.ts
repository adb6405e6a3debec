import { chooseBirds } from '../choose.ts';
import { tellAll } from '../lists.ts';
import { whyNotAlive, youngInReach } from '../lives.ts';
import type { Apply } from './apply.ts';

export const crops: Apply<'crops'> = (scene, value) => {
  const seen = new Set<string>();
  for (const { what, who } of value) {
    const young = chooseBirds(scene, who, {
      did: `looked at (crop ${what})`,
      among: youngInReach(scene.pair),
      impossible: (bird) =>
        whyNotAlive(bird) ?? (seen.has(bird.id) ? 'the same look already says something else of it' : null),
    });
    for (const bird of young) seen.add(bird.id);
    tellAll(young, 'crops', { day: scene.day, crop: what });
  }
};
