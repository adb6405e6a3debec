import { only } from '../../journal/grammar/who.ts';
import { chooseBirds } from '../choose.ts';
import { tellAll } from '../lists.ts';
import { whyNotAlive } from '../lives.ts';
import type { Apply } from './apply.ts';

export const unwell: Apply<'unwell'> = (scene, value) => {
  for (const { who: ref, what } of value) {
    const who = only(ref);
    const birds = chooseBirds(scene, who, {
      did: 'unwell',
      among: [],
      impossible: (bird) => whyNotAlive(bird),
    });
    tellAll(birds, 'unwell', { day: scene.day, text: what.text });
  }
};
