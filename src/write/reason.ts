import { codeOf } from '../journal/system-error.ts';

const reasons: Record<string, string> = {
  EEXIST: 'a file of this name is there by now',
  EACCES: 'permission denied',
  EPERM: 'permission denied',
  EROFS: 'the disk can only be read',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk quota is used up',
  EFBIG: 'the file may not grow any more',
  EIO: 'the disk does not work as it should',
  ENOENT: 'it is no longer there',
  ENOTDIR: 'something on the way to it is no folder',
  EISDIR: 'it is a folder',
};

/** Why a file could not be read or written, in words that say what to look at. */
export function reasonOf(error: unknown): string {
  return reasons[codeOf(error)] ?? (error instanceof Error ? error.message : String(error));
}
