import type { Day } from '../days.ts';
import type { Room } from '../room/fold.ts';
import type { Bird, Clutch } from '../room/model.ts';
import type { Profile } from '../species/profile.ts';
import type { FindBird } from './stock/names.ts';

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
  const known = byHen.get(find) ?? hensOf(room, find);
  byHen.set(find, known);
  return known.get(hen) ?? [];
}

/** By the look-up of a room's names, which is made anew with every room: each room is gone through once. */
const byHen = new WeakMap<FindBird, Map<Bird, Clutch[]>>();

function hensOf({ pairs }: Room, find: FindBird): Map<Bird, Clutch[]> {
  const known = new Map<Bird, Clutch[]>();
  for (const clutch of pairs.flatMap(({ clutches }) => clutches)) {
    const [name, ...others] = clutch.hen;
    const hen = name === undefined || others.length > 0 || clutch.eggs.length === 0 ? null : find(name);
    if (hen === null) continue;
    const own = known.get(hen);
    if (own === undefined) known.set(hen, [clutch]);
    else own.push(clutch);
  }
  for (const own of known.values()) own.sort((a, b) => firstEgg(a) - firstEgg(b));
  return known;
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
