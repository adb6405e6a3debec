import { inNest, isDown } from '../nests-down.ts';
import { siteOf } from '../scene.ts';
import type { Apply } from './apply.ts';

export const nest: Apply<'nest'> = (scene, value, at) => {
  const { fold, pair, day } = scene;
  const site = value.site?.text ?? siteOf(scene);
  const state = value.state ?? 'offered';
  pair.nestStates.push({ day, site, state });
  if (isDown(state)) {
    fold.nestsDown.push({ pair, day, state, at, over: inNest(pair, site, day) });
  }
};
