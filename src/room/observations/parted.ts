import { settle } from '../lives.ts';
import { parentsOf } from '../names.ts';
import type { Apply } from './apply.ts';

export const parted: Apply<'parted'> = (scene, value) => {
  const { pair, day } = scene;
  pair.partings.push({ day, what: 'parted', cock: [...pair.cock], hen: [...pair.hen] });
  for (const parent of ['cock', 'hen'] as const) {
    const housing = value[parent];
    if (housing === null) continue;
    for (const bird of parentsOf(scene, parent)) settle(bird, day, housing.text, null, null);
  }
};
