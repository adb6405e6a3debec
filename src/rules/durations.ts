import type { Room } from '../room/fold.ts';
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
  const bySpecies = new Map<string, OwnDuration[]>();
  for (const one of own) {
    const key = `${one.kind} ${one.species}`;
    const known = bySpecies.get(key);
    if (known === undefined) bySpecies.set(key, [one]);
    else known.push(one);
  }
  const known = new Map<string, Duration>();
  return (kind, species, range) => {
    const key = `${kind} ${species} ${range.low} ${range.high}`;
    const found = known.get(key) ?? learnedDuration(range, bySpecies.get(`${kind} ${species}`) ?? []);
    known.set(key, found);
    return found;
  };
}
