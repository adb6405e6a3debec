import { only } from '../../journal/grammar/who.ts';
import { chooseBirds } from '../choose.ts';
import { tellAll } from '../lists.ts';
import { whyNotAlive } from '../lives.ts';
import { parentsOf } from '../names.ts';
import type { Apply } from './apply.ts';

export const treated: Apply<'treated'> = (scene, value) => {
  for (const { who: ref, what } of value) {
    const birds =
      ref === null
        ? parentsOf(scene, 'both')
        : chooseBirds(scene, only(ref), {
            did: 'treated',
            among: [],
            impossible: (bird) => whyNotAlive(bird),
          });
    tellAll(birds, 'treated', { day: scene.day, text: what.text });
  }
};
