import { createHash, randomBytes } from 'node:crypto';
import { mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import type { FileReading, ReadOne } from './record.ts';

/** A file's reading, with the hash of the text that it was read from. */
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
 * What was read before and has not changed need not be read again. One file a room: a line with the program's build and
 * a hash of all that follows, then the readings as JSON. A cache that is missing, damaged, of another build or not
 * ours at all is simply not used; it may be deleted at any time.
 *
 * @param file the room's cache, absolute
 * @param build changes whenever the grammar or the program does
 */
export function openCache(file: string, build: string, read: ReadOne): ReadingCache {
  const before = load(file, build);
  const now: Record<string, Kept> = Object.create(null);
  let changed = false;
  return {
    read(path, text) {
      const hash = hashOf(text);
      const known = before[path];
      const kept = known?.hash === hash ? known : { hash, reading: read(path, text) };
      changed ||= kept !== known;
      now[path] = kept;
      // The text itself is at hand; it is kept only where reading had to mend it.
      return kept.reading.text === '' ? { ...kept.reading, text } : kept.reading;
    },
    save() {
      if (!changed && Object.keys(before).length === Object.keys(now).length) return;
      store(file, build, now);
    },
  };
}

function hashOf(text: string): string {
  return createHash('sha256').update(text).digest('base64');
}

function headOf(build: string, body: string): string {
  return `nestlog ${build} ${hashOf(body)}`;
}

function load(file: string, build: string): Record<string, Kept> {
  try {
    const text = readFileSync(file, 'utf8');
    const end = text.indexOf('\n');
    const body = text.slice(end + 1);
    if (text.slice(0, end) !== headOf(build, body)) return {};
    return JSON.parse(body);
  } catch {
    return {};
  }
}

function store(file: string, build: string, now: Record<string, Kept>): void {
  const slim = Object.fromEntries(
    Object.entries(now).map(([path, { hash, reading }]) => {
      const same = reading.text === '' || hashOf(reading.text) === hash;
      return [path, { hash, reading: same ? { ...reading, text: '' } : reading }];
    }),
  );
  const body = JSON.stringify(slim);
  // Written beside and renamed, so that two runs at once or a crash leave a whole file.
  const beside = `${file}.${randomBytes(6).toString('hex')}`;
  try {
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(beside, `${headOf(build, body)}\n${body}`, { mode: 0o600 });
    renameSync(beside, file);
  } catch {
    // Nobody needs to know: the next run reads the journals once more.
  }
}
