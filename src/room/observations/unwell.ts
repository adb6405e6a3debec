import { chooseBirds } from '../choose.ts';
import { familyOf } from '../family.ts';
import { tellAll } from '../lists.ts';
import { whyNotAlive } from '../lives.ts';
import type { Apply } from './apply.ts';

export const unwell: Apply<'unwell'> = (scene, value) => {
  for (const { who, what } of value) {
    const birds = chooseBirds(scene, who, {
      did: 'unwell',
      among: familyOf(scene, who),
      impossible: (bird) => whyNotAlive(bird),
    });
    tellAll(birds, 'unwell', { day: scene.day, text: what.text });
  }
};
