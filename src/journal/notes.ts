import type { Day } from '../days.ts';
import type { Entry } from './entry.ts';
import { isPrivate } from './private.ts';

/** What a keeper wrote beside what was seen, on a day. */
export interface Note {
  day: Day;
  text: string;
}

/** The notes of entries up to a day, in order of time, but those marked private: what is on paper gets about. */
export function notesOf(entries: readonly Pick<Entry, 'date' | 'note'>[], until: Day): Note[] {
  return entries
    .flatMap(({ date, note }) =>
      note === null || date > until || isPrivate(note.text) ? [] : [{ day: date, text: note.text }],
    )
    .sort((a, b) => a.day - b.day);
}
