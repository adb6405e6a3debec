import { chooseBirds } from '../choose.ts';
import type { Apply } from './apply.ts';

export const sexed: Apply<'sexed'> = (scene, value) => {
  for (const { sex, who } of value) {
    const birds = chooseBirds(scene, who, {
      did: `sexed as ${sex}`,
      among: scene.pair.clutches.flatMap((clutch) => clutch.chicks),
      impossible: () => null,
      past: ({ sex, fate }) => sex !== null || fate !== null,
    });
    for (const bird of birds) bird.sex = sex;
  }
};
