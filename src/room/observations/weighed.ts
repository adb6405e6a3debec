import { only } from '../../journal/grammar/who.ts';
import { chooseBirds, chooseEggs } from '../choose.ts';
import { tellAll } from '../lists.ts';
import { whyNotAlive, whyNotOpen } from '../lives.ts';
import type { Apply } from './apply.ts';

export const weighed: Apply<'weighed'> = (scene, value) => {
  const { day, pair } = scene;
  for (const { who: ref, grams } of value) {
    const who = only(ref);
    if (ref.form === 'egg') {
      const eggs = chooseEggs(scene, who, {
        did: 'weighed',
        among: pair.here.eggs,
        impossible: (egg) => whyNotOpen(egg),
      });
      tellAll(eggs, 'weights', { day, grams, at: ref.at });
    } else {
      const birds = chooseBirds(scene, who, {
        did: 'weighed',
        inHand: true,
        among: [],
        impossible: (bird) => whyNotAlive(bird),
      });
      tellAll(birds, 'weights', { day, grams, at: ref.at });
    }
  }
};
