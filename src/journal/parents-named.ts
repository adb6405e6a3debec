import type { Day } from '../days.ts';
import { mentioning } from './entries.ts';
import type { PairJournal } from './entry.ts';
import type { Located } from './grammar/values.ts';

/** A name that a journal has for one of its parents. */
export interface ParentNamed extends Located {
  /** The day of the line that brings a new mate; null for those of the journal's head. */
  since: Day | null;
}

/** Every name that a journal has for its cock or its hen: those of its head, and whoever took the place since. */
export function parentsNamed(journal: PairJournal, parent: 'cock' | 'hen'): ParentNamed[] {
  const mates = [...mentioning(journal.entries, 'paired', 'reunited')].flatMap(({ date, saw }) =>
    saw.flatMap((observation) => {
      if (observation.key !== 'paired' && observation.key !== 'reunited') return [];
      const mate = observation.value[parent];
      return mate ? [{ ...mate, since: date }] : [];
    }),
  );
  return [...journal[parent].map((name) => ({ ...name, since: null })), ...mates];
}
