import { naturally } from '../findings/naturally.ts';
import type { Room } from '../room/fold.ts';
import { housingKey } from '../room/housings.ts';
import type { Pair } from '../room/model.ts';
import { findSpecies } from '../species/find.ts';
import { idOfFile, shellWord } from '../write/names.ts';
import { meant } from './meant.ts';
import { UsageError } from './usage-error.ts';

/**
 * The name that was said, as it is written in the room: itself, or the only one that differs by no more than capitals and
 * blanks. At the terminal nobody reaches for the shift key; what a journal says is asked about instead, as it stays.
 */
export function asWritten(name: string, known: Iterable<string>): string | null {
  const alike = new Set<string>();
  for (const one of known) {
    if (one === name) return one;
    if (housingKey(one) === housingKey(name)) alike.add(one);
  }
  const [only, ...others] = alike;
  return others.length > 0 ? null : (only ?? null);
}

/** The pair of that id, however its letters are written; one that there is not is wrong usage. */
export function pairNamed(id: string, { pairs }: Pick<Room, 'pairs'>): Pair {
  const known = pairs.map((pair) => pair.id);
  const written = asWritten(id, known);
  const pair = pairs.find((one) => one.id === written);
  const of =
    pair === undefined ? pairs.find(({ cock, hen }) => cock.includes(id) || hen.includes(id)) : undefined;
  if (of !== undefined)
    throw new UsageError(
      `no pair \`${id}\` in this room; it is a bird of ${of.id}: \`nestlog bird ${shellWord(id)}\``,
    );
  if (pair === undefined) throw noSuch('pair', id, known);
  return pair;
}

/** The housing of that name, however its letters are written; one that nobody ever lived in is wrong usage. */
export function housingNamed(name: string, { pairs, birds }: Pick<Room, 'pairs' | 'birds'>): string {
  const all = [...pairs, ...birds.flatMap(({ stays }) => stays)].flatMap(({ housing }) => housing ?? []);
  const known = [...new Set(all)].sort(naturally);
  const found = asWritten(name, known);
  if (found === null) throw noSuch('housing', name, known);
  return found;
}

/** The species as the room calls it, by any of its names; one of which there is neither pair nor bird is wrong usage. */
export function speciesNamed(
  name: string,
  { pairs, birds, own }: Pick<Room, 'pairs' | 'birds' | 'own'>,
): string {
  const known = [...new Set([...pairs, ...birds].flatMap(({ species }) => species ?? []))].sort(naturally);
  const found = asWritten(findSpecies(name, own)?.species ?? name, known);
  const pair = asWritten(
    name,
    pairs.map(({ id }) => id),
  );
  if (found === null && pair !== null)
    throw new UsageError(`no species \`${name}\`; it is a pair: --pair ${shellWord(pair)}`);
  if (found === null) throw noSuch('species', name, known);
  return found;
}

/** Names the one that was probably meant, or all that there are. */
function noSuch(what: string, name: string, known: readonly string[]): UsageError {
  const all = `there is ${known.length === 0 ? 'none' : known.join(', ')}`;
  return new UsageError(`no ${what} \`${name}\` in this room; ${meant(idOfFile(name) ?? name, known, all)}`);
}
