import { hashOf, keep, kept } from './cache-file.ts';
import { restored } from './kept-reading.ts';
import type { FileReading, ReadOne } from './record.ts';

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
 * What was read before and has not changed need not be read again. The readings of a room are kept as JSON, in one file or,
 * as a large room would make a text longer than any string can be, in several; they may be deleted at any time.
 *
 * @param file the room's cache, absolute
 * @param build changes whenever the grammar or the program does
 * @param parts into how many files the room's journals are spread
 */
export function openCache(file: string, build: string, read: ReadOne, parts = 1): ReadingCache {
  const opened = new Map<string, Part>();
  const partOf = (path: string): Part => {
    const name = parts === 1 ? file : `${file}.${hashOf(path).charCodeAt(0) % parts}`;
    const known = opened.get(name) ?? { before: load(name, build), now: Object.create(null), changed: false };
    opened.set(name, known);
    return known;
  };
  return {
    read(source) {
      const { path } = source;
      const part = partOf(path);
      const hash = source.hash ?? hashOf(source.text);
      const known = part.before[path];
      if (known?.hash === hash) {
        part.now[path] = known;
        return restored(path, known.reading);
      }
      part.changed = true;
      const reading = read(source);
      part.now[path] = { hash, reading };
      return reading;
    },
    save() {
      for (const [name, { before, now, changed }] of opened) {
        if (changed || Object.keys(before).length !== Object.keys(now).length)
          keep(name, build, JSON.stringify(now));
      }
    },
  };
}

/** Readings by path: those of earlier runs, and those of the files that there are now. */
interface Part {
  before: Record<string, Kept>;
  now: Record<string, Kept>;
  changed: boolean;
}

function load(file: string, build: string): Record<string, Kept> {
  const text = kept(file, build);
  return text === null ? {} : JSON.parse(text);
}
