import type { Apply } from './apply.ts';

export const chasing: Apply<'chasing'> = (scene, value) => {
  const { by, at, level } = value;
  scene.pair.chasing.push({ day: scene.day, by: by?.text ?? null, at: at?.text ?? null, level });
};
