import { hashOf, keep, kept } from './cache-file.ts';
import type { FileReading, ReadOne, SourceText } from './record.ts';

/** A file's reading, with the hash of the content that it was read from. */
interface Kept {
  hash: string;
  reading: FileReading;
}

/** Readings of earlier runs, and what this run adds to them. */
export interface ReadingCache {
  /** Reads one file, or takes what was read from the very same text before. */
  read: ReadOne;
  /** Keeps what was read for the next run; a folder that cannot be written is no error. */
  save(): void;
}

/**
 * What was read before and has not changed need not be read again. One file a room, the readings as JSON; it may be
 * deleted at any time.
 *
 * @param file the room's cache, absolute
 * @param build changes whenever the grammar or the program does
 */
export function openCache(file: string, build: string, read: ReadOne): ReadingCache {
  const before = load(file, build);
  const now: Record<string, Kept> = Object.create(null);
  let changed = false;
  return {
    read(source) {
      const { path } = source;
      const hash = source.hash ?? hashOf(source.text);
      const known = before[path];
      if (known?.hash === hash) {
        now[path] = known;
        return withText(known.reading, source);
      }
      changed = true;
      const reading = read(source);
      now[path] = { hash, reading: reading.text === source.text ? { ...reading, text: '' } : reading };
      return reading;
    },
    save() {
      if (changed || Object.keys(before).length !== Object.keys(now).length)
        keep(file, build, JSON.stringify(now));
    },
  };
}

/** The text itself is at hand; it is kept only where reading had to mend it. */
function withText(reading: FileReading, source: SourceText): FileReading {
  if (reading.text !== '') return reading;
  return {
    ...reading,
    get text() {
      return source.text;
    },
  };
}

function load(file: string, build: string): Record<string, Kept> {
  try {
    return JSON.parse(kept(file, build) ?? '{}');
  } catch {
    return {};
  }
}
