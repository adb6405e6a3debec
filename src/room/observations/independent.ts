import { chooseBirds, whoeverRears } from '../choose.ts';
import { becomeIndependent, whyNotAlive, youngInReach } from '../lives.ts';
import type { Apply } from './apply.ts';

export const independent: Apply<'independent'> = (scene, who) => {
  const { day, pair } = scene;
  const birds = chooseBirds(scene, who, {
    did: 'independent',
    among: youngInReach(pair),
    impossible: (bird) =>
      whyNotAlive(bird) ??
      (bird.ref === null ? 'it depends on nobody' : null) ??
      (bird.independent !== null ? 'it is independent already' : null) ??
      (bird.fledged === null ? 'it has not left the nest' : null),
    ...whoeverRears,
    rank: (bird) => bird.hatched?.to ?? 0,
  });
  for (const bird of birds) {
    becomeIndependent(bird, { from: Math.max(scene.since.from, bird.fledged?.day ?? day), to: day });
  }
};
