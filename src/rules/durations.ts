import { group } from 'd3-array';
import type { Room } from '../room/fold.ts';
import type { Clutch } from '../room/model.ts';
import type { Range } from '../species/profile.ts';
import { type Duration, learnedDuration } from './forecast/duration.ts';
import { type DurationKind, type OwnDuration, ownDurations } from './forecast/own-durations.ts';

/** How long sitting and the nest take in this room, by kind and species. */
export type Durations = (kind: DurationKind, species: string, range: Range) => Duration;

/** The book, sharpened by what the room's own clutches of the species took. */
export function learnedDurations(room: Room): Durations {
  return durationsFrom(ownDurations(room));
}

/** The same from own durations already at hand. Each species is worked out once. */
export function durationsFrom(own: readonly OwnDuration[]): Durations {
  const bySpecies = group(own, kindAndSpecies);
  const known = new Map<string, Duration>();
  return (kind, species, range) => {
    const key = `${kind} ${species} ${range.low} ${range.high}`;
    const found =
      known.get(key) ?? learnedDuration(range, bySpecies.get(kindAndSpecies({ kind, species })) ?? []);
    known.set(key, found);
    return found;
  };
}

/**
 * What all other clutches say of one: its own outcome never teaches its own forecast. Clutches of a species that took
 * equally long leave the same behind, so that a room of any age works out a few of them.
 */
export function durationsOfOthers(own: readonly OwnDuration[]): (clutch: Clutch) => Durations {
  const byClutch = group(own, ({ clutch }) => clutch);
  const bySpecies = group(own, kindAndSpecies);
  const all = durationsFrom(own);
  const known = new Map<string, Duration>();
  return (clutch) => (kind, species, range) => {
    const wanted = kindAndSpecies({ kind, species });
    const mine = byClutch.get(clutch)?.find((one) => kindAndSpecies(one) === wanted);
    if (mine === undefined) return all(kind, species, range);
    const key = `${wanted} ${range.low} ${range.high} ${mine.days} ${mine.width}`;
    const others = () => (bySpecies.get(wanted) ?? []).filter((one) => one !== mine);
    const found = known.get(key) ?? learnedDuration(range, others());
    known.set(key, found);
    return found;
  };
}

const kindAndSpecies = ({ kind, species }: Pick<OwnDuration, 'kind' | 'species'>) => `${kind} ${species}`;
