import type { Day } from '../days.ts';
import type { Place } from '../findings/finding.ts';
import type { Entries, Entry } from './entry.ts';
import type { Dated } from './future.ts';
import type { ObservationKey } from './observations/index.ts';
import { PackedEntries } from './packed.ts';

/** The day of one entry; of packed ones none is made. */
export function dayAt(entries: Entries, index: number): Day {
  return entries instanceof PackedEntries ? entries.dayOf(index) : (entries[index] as Entry).date;
}

/** One entry; of packed ones it is made anew each time. */
export function entryAt(entries: Entries, index: number): Entry {
  return entries instanceof PackedEntries ? entries.entry(index) : (entries[index] as Entry);
}

/** The dates of entries, in their order; packed ones are made only for the place of a date. */
export function* datedIn(entries: Entries): Generator<Dated> {
  for (let index = 0; index < entries.length; index++) yield new DateOf(entries, index);
}

/** A class, as there may be millions: its getter is made once. */
class DateOf implements Dated {
  readonly date: Day;
  readonly #entries: Entries;
  readonly #index: number;

  constructor(entries: Entries, index: number) {
    this.date = dayAt(entries, index);
    this.#entries = entries;
    this.#index = index;
  }

  get dateAt(): Place {
    return entryAt(this.#entries, this.#index).dateAt;
  }
}

/** Whether all of these were made by a day: a file need not be in the order of time. */
export function allBy(entries: Entries, day: Day): boolean {
  for (let index = 0; index < entries.length; index++) if (dayAt(entries, index) > day) return false;
  return true;
}

/** At least the entries in which something of one of these keys was observed, and few others. */
export function mentioning(entries: Entries, ...keys: ObservationKey[]): Iterable<Entry> {
  return entries instanceof PackedEntries ? entries.mentioning(keys) : entries;
}
