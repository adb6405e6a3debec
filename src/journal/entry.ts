import type { Day } from '../days.ts';
import type { Place } from '../findings/finding.ts';
import type { Located } from './grammar/values.ts';
import type { Observation } from './observations/index.ts';
import type { PackedEntries } from './packed.ts';

/** One visit: what one entry of a log says. What that kind of log does not allow is null. */
export interface Visit<O> {
  /** The whole entry. */
  at: Place;
  date: Day;
  dateAt: Place;
  /** Minutes since midnight, or null. */
  time: number | null;
  /** What is told happened after this day (and time): the keeper's own word for when they last looked. */
  after: { day: Day; time: number | null } | null;
  /** The pair's own clutch number, where the entry is pinned to one. */
  clutch: { number: number; at: Place } | null;
  /** Which nest, where a pair has two. */
  site: Located | null;
  note: Located | null;
  saw: O[];
}

/** What one line of a journal's log says. */
export type Entry = Visit<Observation>;

/** What a pair's journal says of the pair itself. */
export interface PairJournal {
  file: string;
  pair: Located;
  species: Located | null;
  /** One id, or several where one of these is the parent, or none where unknown. */
  cock: Located[];
  hen: Located[];
  housing: Located | null;
  nestLooks: 'freely' | 'sparingly' | 'never' | null;
  entries: Entries;
}

/** All that the journals of one pair say, the pair being named as they name it. */
export function entriesOf(journals: readonly PairJournal[], pair: string): Entry[] {
  return journals.filter((journal) => journal.pair.text === pair).flatMap(({ entries }) => [...entries]);
}

/** The entries of a journal, in the order of its file: as a list, or packed. */
export type Entries = readonly Entry[] | PackedEntries;
