import type { Day } from '../days.ts';
import { type Bird, type Pair, together } from '../room/model.ts';
import type { Brood } from './brood.ts';
import { birdsByName, type FindBird, onlyOf } from './stock/names.ts';

export type Parent = 'cock' | 'hen';

/** A parent that is no longer with its nest. */
export interface ParentAway {
  /** Null where the journal does not say which of the two was taken away. */
  parent: Parent | null;
  bird: Bird | null;
  day: Day;
  /** `parted` is every way of being taken away, `moved` as well as `parted`. */
  how: 'died' | 'gone' | 'parted';
}

/** Which parents of a nest are dead, gone or taken from it, oldest first; without a clutch, since the pair began. */
export function absencesFrom({ pair, clutch, room }: Pick<Brood, 'pair' | 'clutch' | 'room'>): ParentAway[] {
  const away: ParentAway[] = [];
  const since = clutch?.opened ?? Number.NEGATIVE_INFINITY;
  const last = together(pair) ? undefined : pair.partings.at(-1);
  const parting = last !== undefined && last.day >= since ? last : undefined;
  const find = birdsByName(room.birds);
  for (const parent of ['cock', 'hen'] as const) {
    for (const bird of parentBirds(find, parent, pair, clutch?.[parent] ?? [])) {
      if (bird.fate !== null && bird.fate.day >= since) {
        away.push({ parent, bird, day: bird.fate.day, how: bird.fate.kind });
        continue;
      }
      const moved = elsewhereSince(bird, pair);
      if (moved === null || moved < since) continue;
      away.push({ parent, bird, day: Math.min(moved, parting?.day ?? moved), how: 'parted' });
    }
  }
  if (parting !== undefined && away.every(({ how }) => how !== 'parted')) {
    away.push({ parent: null, bird: null, day: parting.day, how: 'parted' });
  }
  return away.sort((a, b) => a.day - b.day);
}

/** The hen of this nest is dead, gone or in another place: she lays here no more. */
export function isHenAway(brood: Brood): boolean {
  return absencesFrom(brood).some(({ parent }) => parent === 'hen');
}

/** One of the two that are the pair now is dead, gone or in another place: the other has no mate to build with. */
export function isAlone(brood: Brood): boolean {
  const { pair, room } = brood;
  const find = birdsByName(room.birds);
  const away = new Set(absencesFrom(brood).map(({ bird }) => bird));
  return (['cock', 'hen'] as const).some((parent) =>
    [...parentBirds(find, parent, pair, [])].some((bird) => bird.fate !== null || away.has(bird)),
  );
}

/** The birds of that parent's name, now and when the clutch was laid; one of several is nobody in particular. */
function parentBirds(find: FindBird, parent: Parent, pair: Pair, atLaying: readonly string[]): Set<Bird> {
  const birds = [pair[parent], atLaying].flatMap((names) => {
    const bird = onlyOf(names, find);
    return bird === null ? [] : [bird];
  });
  return new Set(birds);
}

/** Since when it lives in another place than the nest, in however many cages; null while it lives there. */
function elsewhereSince({ stays }: Bird, pair: Pair): Day | null {
  const elsewhere = stays.slice(
    1 + stays.findLastIndex(({ housing }) => housing === null || housing === pair.housing),
  );
  return elsewhere[0]?.from ?? null;
}
