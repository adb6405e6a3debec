import type { Apply } from './apply.ts';

export const nest: Apply<'nest'> = (scene, value) => {
  const site = value.site?.text ?? scene.entry.site?.text ?? null;
  scene.pair.nestStates.push({ day: scene.day, site, state: value.state ?? 'offered' });
};
