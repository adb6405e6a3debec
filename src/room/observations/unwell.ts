import { only } from '../../journal/grammar/who.ts';
import { chooseBirds } from '../choose.ts';
import { joined } from '../lists.ts';
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
    for (const bird of birds) bird.unwell = joined(bird.unwell, { day: scene.day, text: what.text });
  }
};
