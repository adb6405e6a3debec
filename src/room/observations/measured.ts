import { only } from '../../journal/grammar/who.ts';
import { chooseEggs } from '../choose.ts';
import type { Apply } from './apply.ts';

export const measured: Apply<'measured'> = (scene, value) => {
  for (const { egg: ref, length, breadth } of value) {
    const who = only(ref);
    for (const egg of chooseEggs(scene, who, { did: 'measured', among: [], impossible: () => null })) {
      egg.size = { length, breadth, at: ref.at };
    }
  }
};
