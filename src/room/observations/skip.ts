import { joined } from '../lists.ts';
import { means } from '../scene.ts';
import type { Apply } from './apply.ts';

export const skip: Apply<'skip'> = (scene, value) => {
  const clutch = scene.pair.clutches.findLast((one) => means(scene, one));
  if (clutch === undefined) return;
  for (const task of value) clutch.skipped = joined(clutch.skipped, { task: task.text, day: scene.day });
};
