import type { Day, Span } from '../../days.ts';
import { eggClock, hatchedOn } from '../../room/clock.ts';
import type { Room } from '../../room/fold.ts';
import type { Chick, Clutch, Egg } from '../../room/model.ts';
import type { Range } from '../../species/profile.ts';
import { meanOf } from '../../statistics/sums.ts';
import type { Length } from './duration.ts';

export type DurationKind = 'incubation' | 'fledging';

/** How long one clutch of this room took, as a mean over its eggs or chicks. */
export interface OwnDuration extends Length {
  kind: DurationKind;
  /** The profile's own name of the species. */
  species: string;
  /** What the profile says of it. */
  range: Range;
  clutch: Clutch;
  /** The day from which all of it was known. */
  known: Day;
}

/** One egg's or chick's clock, and the days on which it hatched or fledged. */
interface Member {
  start: Span;
  end: Span;
}

/**
 * What the room's clutches took up to the day stood on: one duration a clutch, because its eggs share their pair,
 * their housing and their weather. Only counted clutches teach, and nobody whose age was told by eye.
 */
export function ownDurations(room: Room): OwnDuration[] {
  return [...eachOwnDuration(room)];
}

/** The same one by one, for whoever keeps less of them than a list. */
export function* eachOwnDuration({ pairs }: Room): Generator<OwnDuration> {
  for (const { clutches } of pairs) {
    for (const clutch of clutches) {
      for (const kind of ['incubation', 'fledging'] as const) {
        const found = ownDuration(kind, clutch);
        if (found !== null) yield found;
      }
    }
  }
}

/** The eggs or chicks that a duration is the mean of. They are many, and mostly nobody asks for them. */
export function membersOf({ kind, clutch }: Pick<OwnDuration, 'kind' | 'clutch'>): Member[] {
  return kind === 'incubation'
    ? clutch.eggs.flatMap((egg) => hatching(egg) ?? [])
    : clutch.chicks.flatMap((chick) => fledging(chick) ?? []);
}

function hatching(egg: Egg): Member | null {
  if (egg.fate?.kind !== 'hatched' || egg.assumed || egg.aged !== null || egg.fate.bird.aged !== null)
    return null;
  const clock = eggClock(egg, egg.fate.day);
  if (clock === null) return null;
  return { start: clock.start, end: hatchedOn(egg.fate.bird) };
}

function fledging(bird: Chick): Member | null {
  const { fledged, aged, egg } = bird;
  if (fledged === null || aged !== null || egg.assumed) return null;
  return { start: hatchedOn(bird), end: fledged.span };
}

/** How long it took this clutch; null where nobody can tell, or where a date must be a slip. */
export function ownDuration(kind: DurationKind, clutch: Clutch): OwnDuration | null {
  const species = clutch.pair.profile?.species;
  const range = clutch.pair.profile?.[kind]?.value;
  if (species === undefined || range === undefined || !clutch.counted) return null;
  const members = membersOf({ kind, clutch });
  if (members.length === 0) return null;
  const days = meanOf(members.map(lengthOf));
  const width = meanOf(members.map(({ start, end }) => end.to - end.from + start.to - start.from));
  // A slip in a date must not teach the room that eggs take a month.
  if (days < range.low / 2 || days > range.high * 1.5) return null;
  const known = Math.max(...members.map(({ end }) => end.to));
  const sure = meanOf(members.map(({ start, end }) => end.to - start.to));
  return { kind, species, range, clutch, days, width, sure, known };
}

/**
 * To the day of the look that found it, which is the day that forecasts are about, from the middle of the days on
 * which it may have begun, as forecasts begin on each of them alike: counted from the last of these days, each
 * forecast would come half of them too early.
 */
function lengthOf({ start, end }: Member): number {
  return end.to - (start.from + start.to) / 2;
}
