import type { Apply } from './apply.ts';

export const done: Apply<'done'> = (scene, value) => {
  for (const name of value) scene.pair.done.push({ day: scene.day, name: name.text });
};
