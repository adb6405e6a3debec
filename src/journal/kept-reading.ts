import { PackedEntries } from './packed.ts';
import type { FileReading, SourceText } from './record.ts';

/** What is kept of a reading: its text only where reading had to mend it, as the file itself is at hand. */
export function withoutText(reading: FileReading, { text }: SourceText): FileReading {
  return reading.text === text ? { ...reading, text: '' } : reading;
}

/**
 * The reading again that became JSON without its text. Nothing in it is cut from that text, which would hold the whole of
 * it in memory.
 *
 * @param source must be the very text that was read
 */
export function restored(json: string, source: SourceText): FileReading {
  return restoredFrom(JSON.parse(json), source);
}

/** As {@link restored}, of JSON that has been read. */
export function restoredFrom(reading: FileReading, source: SourceText): FileReading {
  const { says } = reading;
  const whole = { ...reading, says: { ...says, ...journalOf(says, source) } };
  if (reading.text !== '') return whole;
  return {
    ...whole,
    get text() {
      return source.text;
    },
  };
}

function journalOf({ journal }: FileReading['says'], { path }: SourceText): FileReading['says'] {
  if (journal === undefined || Array.isArray(journal.entries)) return {};
  const packed = journal.entries as unknown as ReturnType<PackedEntries['toJSON']>;
  return { journal: { ...journal, entries: PackedEntries.from(path, packed) } };
}
