import { nearest } from '../findings/nearest.ts';
import type { Room } from '../room/fold.ts';
import type { Pair } from '../room/model.ts';
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

/** Refuses a name that is none of these; null asks for nothing. */
export function mustBeOneOf(what: string, name: string | null, known: readonly string[]): void {
  if (name !== null && !known.includes(name)) throw noSuch(what, name, known);
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
