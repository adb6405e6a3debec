import { nearest } from '../../findings/nearest.ts';
import { goneWays } from '../../journal/observations/gone.ts';
import { chooseBirds, namedFirst } from '../choose.ts';
import { endKnown, endLife, feederOf, whyNotAlive } from '../lives.ts';
import type { Bird, Clutch } from '../model.ts';
import type { Apply } from './apply.ts';

export const gone: Apply<'gone'> = (scene, value) => {
  const told = new Set<Bird>();
  for (const { how, who } of namedFirst(value)) {
    const birds = chooseBirds(scene, who, {
      did: 'gone',
      cause: (said) => nearest(said, goneWays),
      among: ownYoung(scene.pair.clutches),
      impossible: (bird) => (endKnown(bird, 'gone', scene.day, how) ? null : whyNotAlive(bird)),
      told,
      past: (bird) => (feederOf(bird) ?? scene.pair) !== scene.pair,
    });
    for (const bird of birds) {
      endLife(bird, { kind: 'gone', day: scene.day, how });
    }
  }
};

/** All young of this pair that are still here, whoever feeds them; by count those that feed themselves go first, as they live with no clutch. */
function ownYoung(clutches: readonly Clutch[]) {
  return clutches.flatMap((clutch) => clutch.chicks).filter((bird) => bird.fate === null);
}
