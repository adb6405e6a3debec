import { chooseBirds, namedFirst } from '../choose.ts';
import { stillAtHome, youngAtHome } from '../family.ts';
import { housingCalled } from '../housings.ts';
import { outBy } from '../left-behind.ts';
import { housingOf, rehouse, whyNotAlive } from '../lives.ts';
import type { Bird } from '../model.ts';
import { parentsOf } from '../names.ts';
import type { Apply } from './apply.ts';

export const moved: Apply<'moved'> = (scene, value) => {
  const { fold, pair, day } = scene;
  const told = new Set<Bird>();
  for (const { who, housing: said } of namedFirst(value)) {
    const housing = housingCalled(fold, said);
    if (who === null) {
      const parents = parentsOf(scene, 'both').filter((bird) => livesHere(bird, pair.housing));
      const family: Bird[] = [...parents, ...youngAtHome(pair)];
      pair.housing = housing;
      for (const bird of family) rehouse(bird, day, housing);
      continue;
    }
    const home = stillAtHome(pair, day);
    // Of whom nobody wrote that it left the nest only where nobody else is out of it.
    const out = home.filter(({ fledged }) => fledged !== null);
    const enough = who.kind === 'all' ? out.length > 0 : who.kind === 'count' && out.length >= who.count;
    const birds = chooseBirds(scene, who, {
      did: 'moved',
      among: enough ? out : home,
      impossible: (bird) => whyNotAlive(bird),
      told,
      past: ({ independent }) => independent === null,
    });
    for (const bird of birds) {
      if (home.some((one) => one === bird)) bird.fledged ??= outBy(bird, day);
      rehouse(bird, day, housing);
    }
  }
};

/** A parent that is dead, or was parted and lives elsewhere, does not come along. */
function livesHere(bird: Bird, housing: string | null): boolean {
  return bird.fate === null && (housingOf(bird) ?? housing) === housing;
}
