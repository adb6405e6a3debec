import {
  accessSync,
  closeSync,
  constants,
  fsyncSync,
  openSync,
  readFileSync,
  realpathSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname } from 'node:path';
import writeFileAtomic from 'write-file-atomic';
import { codeOf } from '../journal/system-error.ts';
import { reasonOf } from './reason.ts';

/**
 * What became of a file: the new text stands there, or somebody else had changed it first, or it could not be done.
 * Then `stands` says which text was found there afterwards; whichever it is, it is whole.
 */
export type Replaced =
  | { state: 'written' }
  | { state: 'changed' }
  | { state: 'failed'; reason: string; stands: 'before' | 'after' | 'neither' };

/** Somebody else wrote between reading and writing. */
class Changed extends Error {}

const WRITE_BITS = 0o222;

/**
 * Puts a new text in a file's place in one step: it is written beside it, brought to the disk and renamed. Whatever
 * happens in between, the old text is whole or the new one is. Links stay links, and the file keeps its mode and owner.
 *
 * @param before what was read: a file that says anything else by now is left alone
 * @param begun is told the name of the file beside it, for whoever has to tidy up after a kill
 */
export function replaceFile(
  path: string,
  before: string,
  after: string,
  begun: (temporary: string) => void = () => {},
): Replaced {
  try {
    const file = realpathSync(path);
    mustBeAsRead(file, before);
    mustBeWritable(file);
    writeFileAtomic.sync(file, '', {
      // The library's own write is one call, and takes a short one, as on a full disk, for the whole.
      tmpfileCreated: (temporary) => {
        begun(temporary);
        writeWhole(temporary, after);
        mustBeAsRead(file, before);
      },
    });
    syncFolder(dirname(file));
    return { state: 'written' };
  } catch (error) {
    if (error instanceof Changed) return { state: 'changed' };
    return { state: 'failed', reason: reasonOf(error), stands: standing(path, before, after) };
  }
}

function mustBeAsRead(file: string, text: string): void {
  if (!readFileSync(file).equals(Buffer.from(text))) throw new Changed();
}

/** Renaming asks only the folder; a file that its keeper made read-only is to stay as it is. */
function mustBeWritable(file: string): void {
  accessSync(file, constants.W_OK);
  if ((statSync(file).mode & WRITE_BITS) === 0) {
    throw Object.assign(new Error('the file can only be read'), { code: 'read-only' });
  }
}

function writeWhole(path: string, text: string): void {
  const file = openSync(path, 'r+');
  try {
    writeFileSync(file, text);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** The new name is on the disk once its folder is. Not every system can open one; then it is left to the system. */
function syncFolder(path: string): void {
  let folder: number;
  try {
    folder = openSync(path, 'r');
  } catch {
    return;
  }
  try {
    fsyncSync(folder);
  } catch (error) {
    if (!['EINVAL', 'EPERM', 'ENOTSUP', 'EBADF', 'EISDIR'].includes(codeOf(error))) throw error;
  } finally {
    closeSync(folder);
  }
}

function standing(path: string, before: string, after: string): 'before' | 'after' | 'neither' {
  try {
    const bytes = readFileSync(path);
    if (bytes.equals(Buffer.from(before))) return 'before';
    return bytes.equals(Buffer.from(after)) ? 'after' : 'neither';
  } catch {
    return 'neither';
  }
}
