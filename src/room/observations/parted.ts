import { livingParents } from '../family.ts';
import { housingCalled } from '../housings.ts';
import { settle } from '../lives.ts';
import type { Apply } from './apply.ts';

export const parted: Apply<'parted'> = (scene, value, at) => {
  const { fold, pair, day } = scene;
  pair.partings.push({ day, what: 'parted', cock: [...pair.cock], hen: [...pair.hen] });
  for (const parent of ['cock', 'hen'] as const) {
    const said = value[parent];
    if (said === null) continue;
    const housing = housingCalled(fold, said);
    for (const bird of livingParents(scene, parent, { at, did: 'parted' }))
      settle(bird, day, housing, null, null);
  }
};
