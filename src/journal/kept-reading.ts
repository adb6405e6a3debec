import { PackedEntries } from './packed.ts';
import type { FileReading } from './record.ts';

/** The reading of a file again that became JSON: its entries are packed again where they were. */
export function restored(path: string, reading: FileReading): FileReading {
  const { journal } = reading.says;
  if (journal === undefined || Array.isArray(journal.entries)) return reading;
  const packed = journal.entries as unknown as ReturnType<PackedEntries['toJSON']>;
  const entries = PackedEntries.from(path, packed);
  return { ...reading, says: { ...reading.says, journal: { ...journal, entries } } };
}
