import type { Room } from '../room/fold.ts';
import { onlyFor } from '../rules/agenda/only.ts';
import type { CommandOption } from './context.ts';
import { housingNamed, pairNamed, speciesNamed } from './named.ts';
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
export function wantedOf(
  { pair, housing, species }: Omit<Narrowed, 'days'>,
  room: Room,
): ReturnType<typeof onlyFor> {
  return onlyFor(room, {
    pair: pair === undefined ? null : pairNamed(pair, room).id,
    housing: housing === undefined ? null : housingNamed(housing, room),
    species: species === undefined ? null : speciesNamed(species, room),
  });
}

function daysAhead(text: string): number {
  if (/^\d{1,3}$/.test(text)) return Number(text);
  throw new UsageError(`--days takes a number of days such as 14, not \`${text}\``);
}
