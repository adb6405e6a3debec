import { type Only, onlyFor } from '../rules/agenda/only.ts';
import { findSpecies } from '../species/find.ts';
import type { CommandOption } from './context.ts';
import { housingNamed, mustBeOneOf, pairNamed } from './named.ts';
import type { OpenRoom } from './room.ts';
import { UsageError } from './usage-error.ts';

/** How far ahead, and for whom: what every command that tells the agenda can be asked. */
export interface Narrowed {
  days: number;
  pair?: string;
  housing?: string;
  species?: string;
}

/** The options of an agenda, `days` ahead by default. */
export function daysOption(days: number): CommandOption {
  return { flags: '--days <number>', description: 'how many days ahead', default: days, parse: daysAhead };
}

export const onlyOptions: readonly CommandOption[] = [
  { flags: '--pair <id>', description: 'only this pair' },
  { flags: '--housing <name>', description: 'only what is to be done there' },
  { flags: '--species <name>', description: 'only pairs and birds of this species' },
];

/** Whether a task or warning is among those asked for; a name that the room does not have is wrong usage. */
export function wantedOf(options: Omit<Narrowed, 'days'>, open: OpenRoom): ReturnType<typeof onlyFor> {
  return onlyFor(open.room, askedFor(options, open));
}

/** The names asked for, or a sentence that says which there are. */
function askedFor(options: Omit<Narrowed, 'days'>, { room, record }: OpenRoom): Only {
  const { pair = null, species = null } = options;
  if (pair !== null) pairNamed(pair, room);
  const housing = options.housing === undefined ? null : housingNamed(options.housing, room);
  const kept = [...new Set(room.pairs.flatMap((known) => known.species ?? []))];
  const named = species === null ? null : (findSpecies(species, record.ownSpecies)?.species ?? species);
  mustBeOneOf('species', named, kept);
  return { pair, housing, species: named };
}

function daysAhead(text: string): number {
  if (/^\d{1,3}$/.test(text)) return Number(text);
  throw new UsageError(`--days takes a number of days such as 14, not \`${text}\``);
}
