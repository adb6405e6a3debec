import { chooseBirds } from '../choose.ts';
import { endKnown, endLife, whyNotAlive, youngInReach } from '../lives.ts';
import type { Apply } from './apply.ts';

export const died: Apply<'died'> = (scene, value) => {
  const { day, since } = scene;
  for (const { cause, who } of value) {
    const birds = chooseBirds(scene, who, {
      did: 'died',
      among: youngInReach(scene.pair),
      impossible: (bird) => (endKnown(bird, 'died', day, cause?.text ?? null) ? null : whyNotAlive(bird)),
      kind: (bird) => bird.clutch?.pair.id,
    });
    for (const bird of birds) {
      endLife(bird, {
        kind: 'died',
        day,
        span: {
          from: bird.ref === null ? day : Math.max(since.from, bird.hatched?.from ?? since.from),
          to: day,
        },
        cause: cause?.text ?? null,
      });
    }
  }
};
