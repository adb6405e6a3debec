import { readFileSync, realpathSync, statSync } from 'node:fs';
import { dirname, isAbsolute, join, relative, sep } from 'node:path';
import type { Photo } from '../journal/photos.ts';
import { type Picture, pictureUri } from '../report/pictures/picture.ts';

/** Bytes of one picture, and of all on a page: more than that no mail takes and no phone likes to open. */
const LARGEST = 12 * 1024 * 1024;
const LARGEST_ALL = 60 * 1024 * 1024;

/**
 * The pictures that entries name, read for a page. Nothing outside the room's folder is read, whichever way a path or
 * a link leads there; what cannot be shown comes with the reason.
 */
export function readPictures(room: string, photos: readonly Photo[]): Picture[] {
  let left = LARGEST_ALL;
  return photos.map((photo): Picture => {
    const { day, path, note } = photo;
    const found = insideRoom(room, photo, left);
    if (typeof found === 'string') return { day, path, note, missing: found };
    left -= found.bytes.length;
    const uri = pictureUri(found.bytes);
    return uri === null
      ? { day, path, note, missing: 'no JPEG, PNG, WebP or GIF that can be read' }
      : { day, path, note, uri };
  });
}

function insideRoom(room: string, { path, journal }: Photo, left: number): { bytes: Buffer } | string {
  const foreign = 'not in the room’s folder';
  if (isAbsolute(path) || /^[a-z][a-z\d+.-]+:/i.test(path) || path.includes('\\')) return foreign;
  const named = join(room, dirname(journal), path);
  // Before any disk is asked: whether something is there is nobody's business either.
  if (outside(room, named)) return foreign;
  try {
    const file = realpathSync(named);
    if (outside(realpathSync(room), file)) return foreign;
    const status = statSync(file);
    if (!status.isFile()) return 'no file';
    if (status.size > LARGEST) return `too large, ${Math.round(status.size / 1024 / 1024)} MB`;
    if (status.size > left) return 'too much with all the others';
    return { bytes: readFileSync(file) };
  } catch {
    return 'not found';
  }
}

/** Whether a file lies outside a folder. */
function outside(folder: string, file: string): boolean {
  const way = relative(folder, file);
  return way === '..' || way.startsWith(`..${sep}`) || isAbsolute(way);
}
