import { none } from './lists.ts';
import type { Bird } from './model.ts';
import type { Fold, Scene } from './scene.ts';

/** A bird that nothing is known of yet. */
export function newBird(id: string, species: string | null): Bird {
  return {
    id,
    ref: null,
    ring: null,
    species,
    sex: null,
    clutch: null,
    egg: null,
    hatched: null,
    firstSeen: null,
    sire: none,
    dam: none,
    stays: none,
    fledged: null,
    independent: null,
    fate: null,
    absences: none,
    placeholder: false,
    arrived: null,
    quarantine: null,
    released: null,
    releases: none,
    weights: none,
    crops: none,
    fedBy: none,
    roosting: none,
    unwell: none,
    treated: none,
    moult: none,
    ringed: null,
    aged: null,
    listed: null,
  };
}

/** The ring that a name means: it may stand there with `ring:` before it, so that digits are no count. */
export function ringIn(name: string): string {
  return name.replace(/^ring:/, '');
}

/** The bird of that id, ring or `PAIR/CLUTCH/cN`; null where the room has no such bird yet. */
export function birdNamed(fold: Fold, name: string, ringOnly = false): Bird | null {
  if (ringOnly) return fold.byRing.get(name) ?? null;
  return fold.birds.get(name) ?? fold.byRef.get(name) ?? fold.byRing.get(ringIn(name)) ?? null;
}

/** The bird of that name, made if this is the first time that it is named. */
export function birdOrNew(fold: Fold, name: string, species: string | null): Bird {
  const found = birdNamed(fold, name);
  if (found !== null) return found;
  const bird = newBird(name, species);
  fold.birds.set(name, bird);
  return bird;
}

/** The pair's cock, hen or both; a parent who may be one of several birds is nobody in particular. */
export function parentsOf(scene: Scene, parent: 'cock' | 'hen' | 'both'): Bird[] {
  const asked = [parent === 'hen' ? [] : scene.pair.cock, parent === 'cock' ? [] : scene.pair.hen];
  const names = asked.flatMap((candidates) => (candidates.length === 1 ? candidates : []));
  return names.map((name) => birdOrNew(scene.fold, name, scene.pair.species));
}
