import { chooseBirds, chooseEggs } from '../choose.ts';
import { eggsInReach, whyNotAlive, whyNotOpen, youngInReach } from '../lives.ts';
import type { Apply } from './apply.ts';

/** Refs of chicks age chicks; anything else ages eggs while there are eggs, and chicks where there are none. */
export const aged: Apply<'aged'> = (scene, value) => {
  const { pair, day } = scene;
  for (const { days, who } of value) {
    const chicks =
      who.kind === 'refs' ? who.refs.some((ref) => ref.form === 'chick') : eggsInReach(pair).length === 0;
    if (chicks) {
      const young = chooseBirds(scene, who, {
        did: 'aged',
        among: youngInReach(pair),
        impossible: (bird) => whyNotAlive(bird),
      });
      for (const bird of young) {
        bird.aged = { day, days };
        bird.hatched = { from: day - days, to: day - days };
      }
    } else {
      const eggs = chooseEggs(scene, who, {
        did: 'aged',
        among: eggsInReach(pair),
        impossible: (egg) => whyNotOpen(egg),
        rank: (egg) => (egg.aged === null ? 0 : 1),
      });
      for (const egg of eggs) egg.aged = { day, days };
    }
  }
};
