import { chooseBirds, namedFirst } from '../choose.ts';
import { tellAll } from '../lists.ts';
import { whyNotAlive } from '../lives.ts';
import type { Bird } from '../model.ts';
import type { Apply } from './apply.ts';

export const roosting: Apply<'roosting'> = (scene, value) => {
  const fledglings = [...scene.pair.here.young].filter(({ fledged }) => fledged !== null);
  const told = new Set<Bird>();
  for (const { where, who } of namedFirst(value)) {
    const birds =
      who === null
        ? fledglings
        : chooseBirds(scene, who, {
            did: 'roosted',
            among: fledglings,
            impossible: (bird) => whyNotAlive(bird),
            told,
          });
    tellAll(birds, 'roosting', { night: scene.day, where });
  }
};
