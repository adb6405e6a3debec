import { closeSync, fsyncSync, linkSync, openSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { isFolder, makeFolders } from '../journal/folders.ts';
import { codeOf } from '../journal/system-error.ts';
import { knowsNoLinks } from './links.ts';
import { reasonOf } from './reason.ts';

/** Why files could not be begun: nothing of them is left. */
export interface CreateFailure {
  path: string;
  reason: string;
  /** The system's code, `EEXIST`. */
  code: string;
}

export interface NewFile {
  /** Relative to the folder, with `/`. */
  path: string;
  text: string;
}

/** One that may be too long to stand in memory: each part is written before the next is made. */
export interface LongFile {
  path: string;
  parts: Iterable<string>;
}

/**
 * Begins files, all of them or none. Each is written whole under a hidden name and then linked to its own, which fails
 * where a file has that name by now: nothing is overwritten, unless that is asked for. If the machine stops in
 * between, every file that is there is whole.
 *
 * @param over `replace`: a file of that name is replaced in one step; should a later one of several fail, those
 *   that were replaced before it stay so
 */
export function createFiles(
  folder: string,
  files: readonly (NewFile | LongFile)[],
  over: 'refuse' | 'replace' = 'refuse',
): CreateFailure | null {
  const hidden: string[] = [];
  const linked: string[] = [];
  let current = '';
  try {
    for (const file of files) {
      const { path } = file;
      current = path;
      const target = join(folder, path);
      const problem = makeFolders(dirname(target));
      if (problem !== null) throw problem;
      hidden.push(writeHidden(target, 'text' in file ? [file.text] : file.parts));
    }
    for (const [index, { path }] of files.entries()) {
      current = path;
      const target = join(folder, path);
      if (over === 'replace') renameSync(hidden[index] as string, target);
      else {
        claim(hidden[index] as string, target);
        linked.push(target);
      }
    }
    return null;
  } catch (error) {
    for (const target of linked) rmSync(target, { force: true });
    // A mistake in making a part is none of the disk.
    if (codeOf(error) === '') throw error;
    return failureOf(folder, current, error);
  } finally {
    for (const path of hidden) rmSync(path, { force: true });
  }
}

/** A folder of that name is no file that could be replaced. */
function failureOf(folder: string, path: string, error: unknown): CreateFailure {
  const taken = codeOf(error) === 'EEXIST' && isFolder(join(folder, path));
  const why = taken ? Object.assign(new Error(), { code: 'EISDIR' }) : error;
  return { path, reason: reasonOf(why), code: codeOf(why) };
}

/** Gives a file its name, if nobody has it. Disks without links get the name first and the text at once behind it. */
function claim(hidden: string, target: string): void {
  try {
    linkSync(hidden, target);
  } catch (error) {
    if (!knowsNoLinks(error)) throw error;
    closeSync(openSync(target, 'wx'));
    renameSync(hidden, target);
  }
}

/** Writes a file beside its place and waits until it is on the disk. */
function writeHidden(target: string, parts: Iterable<string>): string {
  const path = join(dirname(target), `.${target.slice(dirname(target).length + 1)}.new`);
  rmSync(path, { force: true });
  const file = openSync(path, 'wx');
  try {
    for (const part of parts) writeFileSync(file, part);
    fsyncSync(file);
  } catch (error) {
    rmSync(path, { force: true });
    throw error;
  } finally {
    closeSync(file);
  }
  return path;
}
