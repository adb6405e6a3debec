import { chooseEggs } from '../choose.ts';
import { placeEgg, whyNotOpen } from '../lives.ts';
import { takeLookBefore } from '../look-before.ts';
import { owner } from '../wanted.ts';
import { notBroughtToday } from '../where.ts';
import type { Apply } from './apply.ts';

export const pulled: Apply<'pulled'> = (scene, who) => {
  takeLookBefore(scene, [{ who }], 'eggs');
  const eggs = chooseEggs(scene, who, {
    did: 'taken into store',
    among: notBroughtToday(scene, [...scene.pair.here.eggs]),
    impossible: (egg) => whyNotOpen(egg),
    kind: owner,
  });
  for (const egg of eggs) placeEgg(egg, scene.day, { kind: 'store' });
};
