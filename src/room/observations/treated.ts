import type { Place } from '../../findings/finding.ts';
import { chooseBirds } from '../choose.ts';
import { familyOf, livingParents, parentsLeft } from '../family.ts';
import { tellAll } from '../lists.ts';
import { whyNotAlive } from '../lives.ts';
import type { Bird } from '../model.ts';
import type { Scene } from '../scene.ts';
import type { Apply } from './apply.ts';

export const treated: Apply<'treated'> = (scene, value, at) => {
  for (const { who, what } of value) {
    const birds =
      who === null
        ? thoseLeft(scene, at)
        : chooseBirds(scene, who, {
            did: 'treated',
            among: familyOf(scene, who),
            impossible: (bird) => whyNotAlive(bird),
          });
    tellAll(birds, 'treated', { day: scene.day, text: what.text });
  }
};

/** Where nobody is named: the pair, or the one that is left of it. */
function thoseLeft(scene: Scene, at: Place): Bird[] {
  const left = parentsLeft(scene);
  return left.length > 0 ? left : livingParents(scene, 'both', { at, did: 'treated' });
}
