import { chooseBirds, namedFirst } from '../choose.ts';
import type { Bird } from '../model.ts';
import type { Apply } from './apply.ts';

export const sexed: Apply<'sexed'> = (scene, value) => {
  const told = new Set<Bird>();
  for (const { sex, who } of namedFirst(value)) {
    const birds = chooseBirds(scene, who, {
      did: `sexed as ${sex}`,
      among: scene.pair.clutches.flatMap((clutch) => clutch.chicks),
      impossible: () => null,
      told,
      past: ({ sex, fate }) => sex !== null || fate !== null,
    });
    for (const bird of birds) bird.sex = sex;
  }
};
