import { naturally } from '../findings/naturally.ts';
import { nearest } from '../findings/nearest.ts';
import type { Room } from '../room/fold.ts';
import { housingKey } from '../room/housings.ts';
import type { Pair } from '../room/model.ts';
import { findSpecies } from '../species/find.ts';
import { UsageError } from './usage-error.ts';

/** The pair of that id; one that there is not is wrong usage. */
export function pairNamed(id: string, { pairs }: Pick<Room, 'pairs'>): Pair {
  const pair = pairs.find((known) => known.id === id);
  if (pair !== undefined) return pair;
  throw noSuch(
    'pair',
    id,
    pairs.map((known) => known.id),
  );
}

/** The housing of that name, however its letters are written; one that nobody ever lived in is wrong usage. */
export function housingNamed(name: string, { pairs, birds }: Pick<Room, 'pairs' | 'birds'>): string {
  const all = [...pairs, ...birds.flatMap(({ stays }) => stays)].flatMap(({ housing }) => housing ?? []);
  const known = [...new Set(all)].sort(naturally);
  const found = known.find((one) => housingKey(one) === housingKey(name));
  if (found === undefined) throw noSuch('housing', name, known);
  return found;
}

/** The species as the room calls it, by any of its names; one of which there is neither pair nor bird is wrong usage. */
export function speciesNamed(
  name: string,
  { pairs, birds, own }: Pick<Room, 'pairs' | 'birds' | 'own'>,
): string {
  const known = [...new Set([...pairs, ...birds].flatMap(({ species }) => species ?? []))].sort(naturally);
  const asked = findSpecies(name, own)?.species ?? name;
  const found = known.find((one) => one.toLowerCase() === asked.toLowerCase());
  if (found === undefined) throw noSuch('species', name, known);
  return found;
}

/** Names the one that was probably meant, or all that there are. */
function noSuch(what: string, name: string, known: readonly string[]): UsageError {
  const near = nearest(name, known);
  const more =
    near === null
      ? `there is ${known.length === 0 ? 'none' : known.join(', ')}`
      : `did you mean \`${near}\`?`;
  return new UsageError(`no ${what} \`${name}\` in this room; ${more}`);
}
