import { chooseEggs, namedFirst } from '../choose.ts';
import { isLeftBehind } from '../left-behind.ts';
import { placeEgg, whyNotOpen } from '../lives.ts';
import { takeLookBefore } from '../look-before.ts';
import { type Egg, type EggPlace, lastPlace, type Pair } from '../model.ts';
import type { Scene } from '../scene.ts';
import { owner } from '../wanted.ts';
import { notBroughtToday, placeNamed } from '../where.ts';
import type { Apply } from './apply.ts';

export const setUnder: Apply<'set'> = (scene, value) => {
  const told = new Set<Egg>();
  const fromNest = value.filter(({ place }) => place !== null);
  takeLookBefore(scene, fromNest, 'eggs');
  for (const { place, who } of namedFirst(value)) {
    const to: EggPlace | null = place === null ? null : placeNamed(scene, place);
    if (place !== null && to === null) continue;
    const stored = storedOf(scene.pair);
    const eggs = chooseEggs(scene, who, {
      did: 'set',
      among: to === null ? stored : [...stored, ...besideThem(scene, stored, who.kind === 'all')],
      impossible: (egg) => whyNotOpen(egg),
      told,
      kind: owner,
      past: (egg) => isLeftBehind(egg, scene.day) || (stored.length > 0 && !stored.includes(egg)),
    });
    for (const egg of eggs)
      placeEgg(egg, scene.day, to ?? { kind: 'nest', pair: scene.pair, clutch: egg.clutch });
  }
};

/** The pair's eggs that lie in store. */
function storedOf({ clutches }: Pair): Egg[] {
  return clutches
    .flatMap(({ eggs }) => eggs)
    .filter((egg) => egg.fate === null && lastPlace(egg).place.kind === 'store');
}

/**
 * Whom else `set` can take elsewhere, straight from the nest: everyone there where none is in store, else the rest of
 * the same clutches. What was left in the nest while others were pulled stays there, unless it is told: `all` are those
 * in store and what was laid on this day, which nobody chose to leave.
 */
function besideThem(scene: Scene, stored: readonly Egg[], all: boolean): readonly Egg[] {
  const { pair, day } = scene;
  const there = notBroughtToday(scene, [...pair.here.eggs]);
  if (stored.length === 0) return there;
  const clutches = new Set(stored.map(({ clutch }) => clutch));
  return there.filter(({ clutch, laid }) => clutches.has(clutch) && (!all || laid.to === day));
}
