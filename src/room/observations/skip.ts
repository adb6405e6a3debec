import type { Apply } from './apply.ts';

export const skip: Apply<'skip'> = (scene, value) => {
  const clutch = scene.pinned ?? scene.pair.clutches.at(-1);
  for (const task of value) clutch?.skipped.push({ task: task.text, day: scene.day });
};
