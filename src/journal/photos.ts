import type { Day } from '../days.ts';
import type { BirdEntry } from './birds.ts';
import type { Entry } from './entry.ts';
import { isPrivate } from './private.ts';

/** A picture that an entry names. */
export interface Photo {
  day: Day;
  /** As written: beside the journal. */
  path: string;
  /** The journal, relative to the room, with `/`. */
  journal: string;
  /** Null also where it is marked private: a picture is shown, and what stands below it gets about. */
  note: string | null;
}

/** The pictures that entries name, up to a day, in order of time. */
export function photosOf(entries: readonly (Entry | BirdEntry)[], until: Day): Photo[] {
  return entries
    .filter(({ date }) => date <= until)
    .flatMap(({ date, at, note, saw }) =>
      saw.flatMap((observation) =>
        observation.key === 'photo'
          ? observation.value.map(({ text }) => ({
              day: date,
              path: text,
              journal: at.file,
              note: note === null || isPrivate(note.text) ? null : note.text,
            }))
          : [],
      ),
    )
    .sort((a, b) => a.day - b.day);
}
