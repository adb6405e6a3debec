/** The operating system's code of an error, such as `ENOSPC`; empty where it has none. */
export function codeOf(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : '';
}

/** What such a code means to a keeper, in words that say what to look at; null for one that is seldom met. */
export function meaningOf(code: string): string | null {
  return meanings[code] ?? null;
}

const meanings: Record<string, string> = {
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
