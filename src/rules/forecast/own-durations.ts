import type { Day, Span } from '../../days.ts';
import { eggClock, hatchedOn } from '../../room/clock.ts';
import type { Room } from '../../room/fold.ts';
import type { Bird, Clutch, Egg } from '../../room/model.ts';
import type { ObservedDuration } from './duration.ts';

export type DurationKind = 'incubation' | 'fledging';

/** How long one clutch of this room took, as a mean over its eggs or chicks. */
export interface OwnDuration extends ObservedDuration {
  kind: DurationKind;
  /** The profile's own name of the species. */
  species: string;
  clutch: Clutch;
  members: Member[];
  /** The day from which all of it was known. */
  known: Day;
}

/** One egg's or chick's clock, and the days on which it hatched or fledged. */
interface Member {
  start: Span;
  end: Span;
  /** Days between, from the entries' own dates: what was seen was seen then; how far back it may lie is the width. */
  days: number;
}

/**
 * What the room's clutches took up to the day stood on: one duration a clutch, because its eggs share their pair,
 * their housing and their weather. Only counted clutches teach, and nobody whose age was told by eye.
 */
export function ownDurations(room: Room): OwnDuration[] {
  return room.pairs.flatMap(({ clutches }) =>
    clutches.flatMap((clutch) => [
      ...durationOf(
        'incubation',
        clutch,
        clutch.eggs.flatMap((egg) => hatching(egg) ?? []),
      ),
      ...durationOf(
        'fledging',
        clutch,
        clutch.chicks.flatMap((chick) => fledging(chick) ?? []),
      ),
    ]),
  );
}

function hatching(egg: Egg): Member | null {
  if (egg.fate?.kind !== 'hatched' || egg.assumed || egg.aged !== null || egg.fate.bird.aged !== null)
    return null;
  const clock = eggClock(egg, egg.fate.day);
  if (clock === null) return null;
  const end = hatchedOn(egg.fate.bird) ?? egg.fate.span;
  // Nobody saw an inferred start: there the middle is as good as any day.
  const { from, to } = clock.start;
  return { start: clock.start, end, days: end.to - (clock.inferred ? (from + to) / 2 : to) };
}

function fledging(bird: Bird): Member | null {
  const { fledged, aged, egg } = bird;
  const hatched = hatchedOn(bird);
  if (hatched === null || fledged === null || aged !== null || egg?.assumed !== false) return null;
  return { start: hatched, end: fledged.span, days: fledged.span.to - hatched.to };
}

function durationOf(kind: DurationKind, clutch: Clutch, members: Member[]): OwnDuration[] {
  const species = clutch.pair.profile?.species;
  const range = clutch.pair.profile?.[kind]?.value;
  if (species === undefined || range === undefined || !clutch.counted || members.length === 0) return [];
  const mean = (numbers: number[]) => numbers.reduce((sum, one) => sum + one, 0) / numbers.length;
  const days = mean(members.map((member) => member.days));
  const width = mean(members.map(({ start, end }) => end.to - end.from + start.to - start.from));
  // A slip in a date must not teach the room that eggs take a month.
  if (days < range.low / 2 || days > range.high * 1.5) return [];
  return [
    { kind, species, clutch, days, width, members, known: Math.max(...members.map(({ end }) => end.to)) },
  ];
}
