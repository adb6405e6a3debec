import { keptIn } from '../grouped.ts';
import type { Room } from '../room/fold.ts';
import type { Clutch } from '../room/model.ts';
import type { Range } from '../species/profile.ts';
import { type Duration, type Length, learnedDuration, type ObservedDuration } from './forecast/duration.ts';
import {
  type DurationKind,
  eachOwnDuration,
  type OwnDuration,
  ownDuration,
} from './forecast/own-durations.ts';

/** How long sitting and the nest take in this room, by kind and species. */
export type Durations = (kind: DurationKind, species: string, range: Range) => Duration;

/** The book, sharpened by what the room's own clutches of the species took. */
export function learnedDurations(room: Room): Durations {
  return durationsFrom(eachOwnDuration(room));
}

/** The same from own durations already at hand. Each species is worked out once. */
export function durationsFrom(own: Iterable<OwnDuration>): Durations {
  return durationsIn(countedOf(own));
}

/**
 * What all other clutches say of one of these: its own outcome never teaches its own forecast. Clutches of a species that took
 * equally long leave the same behind, so that a room of any age works out a few of them.
 */
export function durationsOfOthers(own: Iterable<OwnDuration>): (clutch: Clutch) => Durations {
  const counted = countedOf(own);
  const all = durationsIn(counted);
  const known = new Map<string, Duration>();
  return (clutch) => (kind, species, range) => {
    const mine = ownDuration(kind, clutch);
    if (mine === null || mine.species !== species) return all(kind, species, range);
    const wanted = kindAndSpecies(mine);
    const key = `${wanted} ${range.low} ${range.high} ${lengthKey(mine)}`;
    return keptIn(known, key, () => learnedDuration(range, without(mine, counted.get(wanted))));
  };
}

/** Durations by kind and species, each length once with the clutches that took it: a lifetime's come to the same few. */
type Counted = ReadonlyMap<string, ReadonlyMap<string, ObservedDuration>>;

function countedOf(own: Iterable<OwnDuration>): Counted {
  const all = new Map<string, Map<string, ObservedDuration>>();
  for (const one of own) {
    const lengths = keptIn(all, kindAndSpecies(one), () => new Map<string, ObservedDuration>());
    const alike = lengths.get(lengthKey(one));
    const { days, width, sure } = one;
    if (alike === undefined) lengths.set(lengthKey(one), { days, width, sure, clutches: 1 });
    else alike.clutches += 1;
  }
  return all;
}

function durationsIn(counted: Counted): Durations {
  const known = new Map<string, Duration>();
  return (kind, species, range) => {
    const wanted = kindAndSpecies({ kind, species });
    const key = `${wanted} ${range.low} ${range.high}`;
    return keptIn(known, key, () => learnedDuration(range, [...(counted.get(wanted)?.values() ?? [])]));
  };
}

function without(
  mine: Length,
  lengths: ReadonlyMap<string, ObservedDuration> = new Map(),
): ObservedDuration[] {
  return [...lengths]
    .map(([key, alike]) => (key === lengthKey(mine) ? { ...alike, clutches: alike.clutches - 1 } : alike))
    .filter(({ clutches }) => clutches > 0);
}

const kindAndSpecies = ({ kind, species }: Pick<OwnDuration, 'kind' | 'species'>) => `${kind} ${species}`;
const lengthKey = ({ days, width, sure }: Length) => `${days} ${width} ${sure}`;
