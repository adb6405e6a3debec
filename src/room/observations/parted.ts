import { livingParents } from '../family.ts';
import { settle } from '../lives.ts';
import type { Apply } from './apply.ts';

export const parted: Apply<'parted'> = (scene, value, at) => {
  const { pair, day } = scene;
  pair.partings.push({ day, what: 'parted', cock: [...pair.cock], hen: [...pair.hen] });
  for (const parent of ['cock', 'hen'] as const) {
    const housing = value[parent];
    if (housing === null) continue;
    for (const bird of livingParents(scene, parent, { at, did: 'parted' }))
      settle(bird, day, housing.text, null, null);
  }
};
