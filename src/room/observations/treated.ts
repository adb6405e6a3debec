import { chooseBirds } from '../choose.ts';
import { familyOf, livingParents } from '../family.ts';
import { tellAll } from '../lists.ts';
import { whyNotAlive } from '../lives.ts';
import type { Apply } from './apply.ts';

export const treated: Apply<'treated'> = (scene, value, at) => {
  for (const { who, what } of value) {
    const birds =
      who === null
        ? livingParents(scene, 'both', { at, did: 'treated' })
        : chooseBirds(scene, who, {
            did: 'treated',
            among: familyOf(scene, who),
            impossible: (bird) => whyNotAlive(bird),
          });
    tellAll(birds, 'treated', { day: scene.day, text: what.text });
  }
};
