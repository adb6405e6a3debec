import { isUtf8 } from 'node:buffer';
import { type Dirent, readdirSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { isYaml } from '../file-names.ts';
import { hashOf } from './cache-file.ts';
import { isFolder } from './folders.ts';
import type { SourceFile, SourceText } from './record.ts';
import { isAlmostOurs, mayBeMisnamed, strayOf } from './stray.ts';
import { codeOf, meaningOf } from './system-error.ts';
import { LOST } from './text/prepare.ts';

/** Bytes. The journal of a lifetime has a hundredth of it. */
const LARGEST = 20 * 1024 * 1024;

/** Of a text that is none, at least this part cannot be read as UTF-8. */
const BINARY_SHARE = 0.05;

/**
 * Reads the files of a room: those beside nestlog.yaml, `species/` and `pairs/` with its folders. Links are followed.
 * Beside them, those that seem to belong there but for their name or that of their folder, to be pointed at.
 * A file that cannot be read is listed with the reason; nothing is thrown. Sorted by path.
 */
export function loadRoom(folder: string): SourceFile[] {
  const files = [
    ...list(folder, '', false),
    ...list(folder, 'species', false),
    ...list(folder, 'pairs', true),
    ...almostOurs(folder).flatMap((path) => list(folder, path, true).filter(isStray)),
  ];
  return files.sort((a, b) => (a.path < b.path ? -1 : 1));
}

/** @param above the real folders that lead here: a link back to one of them is a loop */
function list(room: string, path: string, deep: boolean, above: readonly string[] = []): SourceFile[] {
  const here = join(room, path);
  let names: Dirent[];
  let real: string;
  try {
    real = realpathSync(here);
    if (above.includes(real)) return [{ path, problem: 'loop', detail: '' }];
    names = readdirSync(here, { withFileTypes: true });
  } catch (error) {
    return codeOf(error) === 'ENOENT' || codeOf(error) === 'ENOTDIR' ? [] : [problemOf(path, error)];
  }
  return names.flatMap(({ name }) => {
    if (name.startsWith('.')) return [];
    const inside = path === '' ? name : `${path}/${name}`;
    const below = isFolder(join(room, inside));
    if (below && deep) return list(room, inside, deep, [...above, real]);
    if (isYaml(name)) return [load(room, inside)];
    return !below && mayBeMisnamed(name) ? [load(room, inside)].filter(isStray) : [];
  });
}

/** Folders beside `pairs` and `species` whose name is a slip for theirs; where capitals make no difference it is them. */
function almostOurs(room: string): string[] {
  const identity = (path: string) => {
    try {
      const { dev, ino } = statSync(join(room, path));
      return `${dev} ${ino}`;
    } catch {
      return '';
    }
  };
  let names: string[];
  try {
    names = readdirSync(room);
  } catch {
    return [];
  }
  const ours = [identity('pairs'), identity('species')];
  return names.filter(
    (name) => isAlmostOurs(name) && isFolder(join(room, name)) && !ours.includes(identity(name)),
  );
}

function isStray(file: SourceFile): boolean {
  return !('problem' in file) && strayOf(file.path, file.text) !== null;
}

function load(room: string, path: string): SourceFile {
  const file = join(room, path);
  try {
    const status = statSync(file);
    if (!status.isFile())
      return {
        path,
        problem: 'unreadable',
        detail: status.isDirectory() ? 'it is a folder' : 'it is no file',
      };
    if (status.size > LARGEST)
      return { path, problem: 'too-large', detail: `${Math.round(status.size / 1024 / 1024)} MB` };
    return decode(path, file, readFileSync(file));
  } catch (error) {
    return problemOf(path, error);
  }
}

/** Bytes that are no UTF-8 become U+FFFD, which the reader points at; too many of them are no text at all. */
function decode(path: string, file: string, bytes: Buffer): SourceFile {
  if (bytes.includes(0)) {
    const wide = ['fffe', 'feff'].includes(bytes.toString('hex', 0, 2));
    return { path, problem: 'binary', detail: wide ? 'it is UTF-16' : '' };
  }
  const loaded = new LoadedFile(path, file, bytes);
  if (isUtf8(bytes) && !bytes.includes(LOST)) return loaded;
  const text = bytes.toString('utf8');
  const lost = text.split(LOST).length - 1;
  return lost > text.length * BINARY_SHARE ? { path, problem: 'binary', detail: '' } : loaded;
}

/** A file whose content is known by its hash: most mornings nobody asks for its text. */
class LoadedFile implements SourceText {
  readonly path: string;
  readonly #hash: string;
  readonly #file: string;
  readonly #size: number;
  #bytes: Buffer | null;

  constructor(path: string, file: string, bytes: Buffer) {
    this.path = path;
    this.#file = file;
    this.#hash = hashOf(bytes);
    this.#size = bytes.length;
    this.#bytes = bytes;
  }

  /** No property of its own, so that a copy with another text does not carry it along. */
  get hash(): string {
    return this.#hash;
  }

  get size(): number {
    return this.#size;
  }

  /** Let go once it was given: a room is many files, of which few are asked for again, to show a line of them. */
  get text(): string {
    const bytes = this.#bytes ?? this.#again();
    this.#bytes = null;
    return bytes.toString('utf8');
  }

  /** Nothing where the file is no longer what it was. */
  #again(): Buffer {
    try {
      const bytes = readFileSync(this.#file);
      if (hashOf(bytes) === this.#hash) return bytes;
    } catch {
      // It is gone.
    }
    return Buffer.alloc(0);
  }
}

/** A hash of the names and contents of all files: what is understood of a room on a day follows from it. */
export function fingerprint(files: readonly SourceFile[]): string {
  const lines = files.map((file) =>
    'problem' in file ? [file.path, file.problem, file.detail] : [file.path, file.hash ?? hashOf(file.text)],
  );
  return hashOf(JSON.stringify(lines));
}

function problemOf(path: string, error: unknown): SourceFile {
  const code = codeOf(error);
  if (code === 'ELOOP') return { path, problem: 'loop', detail: '' };
  // Its name was listed a moment ago: what is missing is what it points to.
  const reason = code === 'ENOENT' ? 'it is a link to a file that does not exist' : meaningOf(code);
  return { path, problem: 'unreadable', detail: reason ?? code };
}
