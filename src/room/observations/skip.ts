import { joined } from '../lists.ts';
import { youngestMeant } from '../scene.ts';
import type { Apply } from './apply.ts';

export const skip: Apply<'skip'> = (scene, value) => {
  const clutch = youngestMeant(scene);
  if (clutch === null) return;
  for (const task of value) clutch.skipped = joined(clutch.skipped, { task: task.text, day: scene.day });
};
