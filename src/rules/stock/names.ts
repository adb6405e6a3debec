import { keptIn } from '../../grouped.ts';
import { type Bird, fullRef } from '../../room/model.ts';
import { ringIn } from '../../room/names.ts';

/** Finds the bird behind a name, whichever of its names that is. */
export type FindBird = (name: string) => Bird | null;

/**
 * Birds by all that they go by: their id, `PAIR/CLUTCH/cN`, the chick that `is:` says they are, and their ring, with or
 * without `ring:` before it. An id goes before a ring of the same letters; a ring that is on two birds names the first.
 */
export function birdsByName(birds: readonly Bird[]): FindBird {
  return keptIn(known, birds, () => named(birds));
}

/** The only bird that the names mean; null where there are several, or none: one of several is nobody in particular. */
export function onlyOf(names: readonly string[], find: FindBird): Bird | null {
  return names.length === 1 ? find(names[0] as string) : null;
}

/** A room's birds are named once, whoever asks. */
const known = new WeakMap<readonly Bird[], FindBird>();

function named(birds: readonly Bird[]): FindBird {
  const byName = new Map<string, Bird>();
  const byRing = new Map<string, Bird>();
  const add = (names: Map<string, Bird>, name: string | null | undefined, bird: Bird) => {
    if (name !== null && name !== undefined && !names.has(name)) names.set(name, bird);
  };
  for (const bird of birds) add(byName, bird.id, bird);
  for (const bird of birds) {
    add(byName, fullRef(bird), bird);
    add(byName, bird.listed?.is?.text, bird);
    add(byRing, bird.ring, bird);
  }
  return (name) => byName.get(name) ?? byRing.get(ringIn(name)) ?? null;
}
