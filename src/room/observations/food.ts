import type { Apply } from './apply.ts';

export const food: Apply<'food'> = (scene, value) => {
  const kinds = value.map(({ kind, grams }) => ({ kind: kind.text, grams }));
  scene.pair.food.push({ day: scene.day, kinds });
};
