import type { Room } from '../../room/fold.ts';
import { housingOf } from '../../room/lives.ts';

/** How a morning may be narrowed; null where not asked for. */
export interface Only {
  pair: string | null;
  housing: string | null;
  /** The profile's own name of the species. */
  species: string | null;
}

/**
 * Whether a task or warning belongs to the pair, housing and species asked for. What concerns the whole room belongs
 * to none of them.
 */
export function onlyFor(
  room: Room,
  { pair, housing, species }: Only,
): (one: { pair: string | null; bird: string | null; housing?: string | null }) => boolean {
  const pairs = new Map(room.pairs.map((known) => [known.id, known]));
  const birds = new Map(room.birds.map((known) => [known.id, known]));
  return (one) => {
    const ownPair = one.pair === null ? undefined : pairs.get(one.pair);
    const ownBird = one.bird === null ? undefined : birds.get(one.bird);
    const where =
      one.housing ?? (ownBird === undefined ? null : housingOf(ownBird)) ?? ownPair?.housing ?? null;
    const what = ownPair?.species ?? ownBird?.species ?? null;
    return (
      (pair === null || one.pair === pair) &&
      (housing === null || where === housing) &&
      (species === null || what === species)
    );
  };
}
