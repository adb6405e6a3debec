import { joined } from '../lists.ts';
import type { Apply } from './apply.ts';

export const skip: Apply<'skip'> = (scene, value) => {
  const clutch = scene.pinned ?? scene.pair.clutches.at(-1);
  if (clutch === undefined) return;
  for (const task of value) clutch.skipped = joined(clutch.skipped, { task: task.text, day: scene.day });
};
