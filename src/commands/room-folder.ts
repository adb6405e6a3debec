import { existsSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { isFolder } from '../journal/folders.ts';
import { UsageError } from './usage-error.ts';

/** The files by which a folder is known as a room; each of them may be missing. */
const MARKS = ['nestlog.yaml', 'birds.yaml', 'pairs'];

/** Where the room may be named. */
interface Places {
  /** The value of `--journals`. */
  option: string | undefined;
  /** The value of `NESTLOG_JOURNALS`. */
  environment: string | undefined;
  /** The folder in which the command was called. */
  here: string;
}

/**
 * The absolute folder of the room: `--journals`, else `NESTLOG_JOURNALS`, else the nearest folder upwards with
 * `nestlog.yaml`. A folder that is no room, or none at all, is a `UsageError`.
 */
export function roomFolder(places: Places): string {
  const named = places.option ?? (places.environment || undefined);
  if (named === undefined) {
    const nearest = nearestRoom(places.here);
    if (nearest !== undefined) return nearest;
    throw new UsageError(
      `No room here: neither this folder nor one above it has a nestlog.yaml. Name the room's folder with --journals or NESTLOG_JOURNALS, or begin one: nestlog start room.`,
    );
  }
  const folder = resolve(places.here, named);
  const source = places.option === undefined ? 'NESTLOG_JOURNALS' : '--journals';
  const above = nearestRoom(folder);
  const meant = above === undefined ? '' : ` The room's folder is ${above}.`;
  if (!isFolder(folder))
    throw new UsageError(`No room: ${source} names ${named}, which is no folder.${meant}`);
  if (!isRoom(folder)) {
    const said = named === '' ? 'an empty name' : named;
    throw new UsageError(
      `No room: ${said}, named by ${source}, has none of ${MARKS.join(', ')} in it.${meant}`,
    );
  }
  return folder;
}

/** The same places, for commands that need no room: the folder may lack the files, or not exist yet. */
export function anyFolder(places: Places): string {
  const named = places.option ?? (places.environment || undefined);
  return named === undefined ? (nearestRoom(places.here) ?? places.here) : resolve(places.here, named);
}

/** Whether a folder has any of the files that make it a room. */
export function isRoom(folder: string): boolean {
  return MARKS.some((mark) => existsSync(join(folder, mark)));
}

function nearestRoom(from: string): string | undefined {
  for (let folder = resolve(from); ; folder = dirname(folder)) {
    if (existsSync(join(folder, 'nestlog.yaml'))) return folder;
    if (folder === dirname(folder)) return undefined;
  }
}
