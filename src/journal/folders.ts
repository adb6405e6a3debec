import { mkdirSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import { codeOf } from './system-error.ts';

/**
 * Makes a folder, with those above it that are missing; one that is there is left as it is. Node can do so by itself, but
 * tries for ever where the system will have no folder, as below `/proc`.
 *
 * @param mode of the folders that are made
 * @throws the system's error
 */
export function makeFolders(path: string, mode = 0o777): void {
  try {
    makeFolder(path, mode);
  } catch (error) {
    if (codeOf(error) !== 'ENOENT' || dirname(path) === path) throw error;
    makeFolders(dirname(path), mode);
    makeFolder(path, mode);
  }
}

function makeFolder(path: string, mode: number): void {
  try {
    mkdirSync(path, mode);
  } catch (error) {
    if (codeOf(error) !== 'EEXIST') throw error;
    if (!isFolder(path))
      throw Object.assign(new Error(`ENOTDIR: not a folder, ${path}`), { code: 'ENOTDIR' });
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
