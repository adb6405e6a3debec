import { chooseEggs, owner } from '../choose.ts';
import { placeEgg, whyNotOpen } from '../lives.ts';
import type { Egg, EggPlace } from '../model.ts';
import type { Scene } from '../scene.ts';
import { placeNamed } from '../where.ts';
import type { Apply } from './apply.ts';

export const setUnder: Apply<'set'> = (scene, value) => {
  for (const { place, who } of value) {
    const to: EggPlace | null = place === null ? null : placeNamed(scene, place);
    if (place !== null && to === null) continue;
    const eggs = chooseEggs(scene, who, {
      did: 'set',
      among: eggsFor(scene, to),
      impossible: (egg) => whyNotOpen(egg),
      kind: owner,
    });
    for (const egg of eggs)
      placeEgg(egg, scene.day, to ?? { kind: 'nest', pair: scene.pair, clutch: egg.clutch });
  }
};

/**
 * The pair's eggs that lie in store, oldest first, and where they go elsewhere the one laid that day; where none is stored,
 * those that are taken elsewhere from its nest.
 */
function eggsFor({ pair, day }: Scene, to: EggPlace | null): Egg[] {
  const stored = pair.clutches
    .flatMap((clutch) => clutch.eggs)
    .filter((egg) => egg.fate === null && egg.places.at(-1)?.place.kind === 'store');
  if (to === null) return stored;
  const inNest = [...pair.here.eggs];
  if (stored.length === 0) return inNest;
  const clutches = new Set(stored.map(({ clutch }) => clutch));
  return [...stored, ...inNest.filter(({ laid, clutch }) => laid.to === day && clutches.has(clutch))];
}
