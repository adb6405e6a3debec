import { chooseBirds, namedFirst } from '../choose.ts';
import { tellAll } from '../lists.ts';
import { whyNotAlive } from '../lives.ts';
import type { Bird } from '../model.ts';
import type { Apply } from './apply.ts';

export const moult: Apply<'moult'> = (scene, value) => {
  const told = new Set<Bird>();
  for (const { what, who } of namedFirst(value)) {
    const birds = chooseBirds(scene, who, {
      did: 'moulted',
      among: scene.pair.clutches.flatMap((clutch) => clutch.chicks),
      impossible: (bird) => whyNotAlive(bird),
      told,
      past: (bird) => bird.moult.at(-1)?.state === what,
    });
    tellAll(birds, 'moult', { day: scene.day, state: what });
  }
};
