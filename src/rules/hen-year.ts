import type { Day } from '../days.ts';
import { grouped, keptIn } from '../grouped.ts';
import type { Room } from '../room/fold.ts';
import { type Bird, type Clutch, type Pair, together } from '../room/model.ts';
import type { Profile } from '../species/profile.ts';
import { type FindBird, onlyOf } from './stock/names.ts';

const YEAR = 365;

/** How many clutches a hen may be asked for in a year: the room's limit, else the species'; null where neither says. */
export function clutchLimit({ settings }: Room, profile: Profile | null): number | null {
  return settings.limits.clutchesPerYear ?? profile?.clutchesPerYear?.value.high ?? null;
}

/** The day of a clutch's first egg. */
export function firstEgg({ eggs, opened }: Clutch): Day {
  return eggs[0]?.laid.to ?? opened;
}

/** Every clutch with eggs that is known to be this hen's, whatever pair she laid it in, the oldest first. */
export function clutchesOfHen(room: Room, hen: Bird, find: FindBird): readonly Clutch[] {
  return keptIn(byHen, find, () => hensOf(room, find)).get(hen) ?? [];
}

/** By the look-up of a room's names, which is made anew with every room: each room is gone through once. */
const byHen = new WeakMap<FindBird, Map<Bird | null, Clutch[]>>();

function hensOf({ pairs }: Room, find: FindBird): Map<Bird | null, Clutch[]> {
  const laid = pairs.flatMap(({ clutches }) => clutches).filter(({ eggs }) => eggs.length > 0);
  const byHen = grouped(laid, ({ hen }) => onlyOf(hen, find));
  for (const own of byHen.values()) own.sort((a, b) => firstEgg(a) - firstEgg(b));
  return byHen;
}

/** Those of them that were begun in the year up to a day. */
export function inYearTo(clutches: readonly Clutch[], day: Day): Clutch[] {
  return clutches.filter((clutch) => firstEgg(clutch) <= day && day - firstEgg(clutch) < YEAR);
}

/** From when a hen with these clutches in the last year may be asked for one more. */
export function freeAgain(clutches: readonly Clutch[], limit: number): Day | null {
  const counted = clutches[clutches.length - limit];
  return counted === undefined ? null : firstEgg(counted) + YEAR;
}

/** The rest of a hen that has had, or will with her clutch of today have had, as many clutches as a year allows her. */
export interface NeededRest {
  hen: Bird;
  /** How many she laid in the year, and the last of them: with its young she is done. */
  clutches: number;
  last: Clutch;
  limit: number;
  /** The day on which the first of its young left the nest; null while none has. */
  from: Day | null;
  /** From when she may be asked for one more. */
  free: Day;
}

/**
 * The rest that the hen of a pair needs, or null: she is not known, is parted and rests already, may be asked for more,
 * the keeper let it pass or took the nest, or of her last clutch nobody can leave the nest any more.
 */
export function restOf(room: Room, pair: Pair, find: FindBird): NeededRest | null {
  const hen = onlyOf(pair.hen, find);
  const limit = clutchLimit(room, pair.profile);
  if (!hen || hen.fate !== null || limit === null || !together(pair)) return null;
  const year = inYearTo(clutchesOfHen(room, hen, find), room.day);
  const free = freeAgain(year, limit);
  const last = year.at(-1);
  if (last === undefined || last.pair !== pair || free === null) return null;
  if (last.skipped.some(({ task }) => task === 'rest')) return null;
  const days = last.chicks.flatMap(({ fledged }) => fledged?.day ?? []);
  const from = days.length === 0 ? null : Math.min(...days);
  if (from === null && !mayFledge(last)) return null;
  if (from !== null && pair.nestStates.some(({ state, day }) => state === 'removed' && day >= from))
    return null;
  return { hen, clutches: year.length, last, limit, from, free };
}

function mayFledge({ eggs, chicks }: Clutch): boolean {
  return eggs.some(({ fate }) => fate === null) || chicks.some(({ fate }) => fate === null);
}
