import { mkdirSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import { codeOf } from './system-error.ts';

/**
 * Makes a folder, with those above it that are missing; one that is there is left as it is. Node can do so by itself, but
 * tries for ever where the system will have no folder, as below `/proc`.
 *
 * @param mode of the folders that are made
 * @returns the system's error, or null where the folder is there now
 */
export function makeFolders(path: string, mode = 0o777): unknown {
  const error = makeFolder(path, mode);
  if (codeOf(error) !== 'ENOENT' || dirname(path) === path) return error;
  return makeFolders(dirname(path), mode) ?? makeFolder(path, mode);
}

function makeFolder(path: string, mode: number): unknown {
  try {
    mkdirSync(path, mode);
    return null;
  } catch (error) {
    if (codeOf(error) !== 'EEXIST') return error;
    if (isFolder(path)) return null;
    return Object.assign(new Error(`ENOTDIR: not a folder, ${path}`), { code: 'ENOTDIR' });
  }
}

/** Whether a folder of that name can be seen there. */
export function isFolder(path: string): boolean {
  try {
    return statSync(path).isDirectory();
  } catch {
    return false;
  }
}
