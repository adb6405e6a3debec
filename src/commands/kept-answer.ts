import { readdirSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Day } from '../days.ts';
import { hashOf, keep, kept } from '../journal/cache-file.ts';
import { fingerprint, loadRoom } from '../journal/load.ts';
import { build } from './build.ts';
import { cacheFolder } from './cache-folder.ts';
import { roomFolder } from './room-folder.ts';
import { UsageError } from './usage-error.ts';

type Environment = Record<string, string | undefined>;

/** How the program was called: all that its answer depends on, but the day and the room. */
interface Call {
  words: readonly string[];
  here: string;
  environment: Environment;
  isTerminal: boolean;
  columns: number | undefined;
}

/** What was printed, and under which circumstances the same would be printed again. */
export interface Answer {
  /** The value of `--journals`. */
  option: string | undefined;
  /** The room's folder. */
  folder: string;
  /** On the keeper's wall. */
  today: Day;
  /** Of all files of the room. */
  fingerprint: string;
  text: string;
}

/** Calls differ by their words and the width of a window; nobody needs hundreds. */
const MOST = 64;

/** The file for the answer to one call; undefined where nothing can be kept. */
export function answerFile({ words, here, environment, isTerminal, columns }: Call): string | undefined {
  const folder = cacheFolder(environment);
  if (folder === undefined) return undefined;
  const { NESTLOG_JOURNALS, COLUMNS, FORCE_COLOR, NO_COLOR, TERM } = environment;
  const decisive = [NESTLOG_JOURNALS, COLUMNS, FORCE_COLOR, NO_COLOR, TERM, isTerminal, columns];
  // What is undefined becomes null: no variable of the environment is.
  const name = hashOf(JSON.stringify([words, here, ...decisive]));
  return join(folder, 'answers', `${name.replace(/\W/g, '').slice(0, 22)}.cache`);
}

/** Keeps an answer for the next time that it is asked for. */
export function keepAnswer(file: string, { text, ...when }: Answer): void {
  const folder = dirname(file);
  try {
    if (readdirSync(folder).length >= MOST) rmSync(folder, { recursive: true, force: true });
  } catch {
    // It does not exist yet.
  }
  keep(file, build, `${JSON.stringify(when)}\n${text}`);
}

/**
 * What an earlier run answered to the same call, if it would be answered again: by this program, on this day, from
 * files that have not changed by a byte. Else null.
 */
export function keptAnswer(
  file: string,
  { environment, here, today }: { environment: Environment; here: string; today: Day },
): string | null {
  const body = kept(file, build);
  if (body === null) return null;
  const end = body.indexOf('\n');
  const when: Omit<Answer, 'text'> = JSON.parse(body.slice(0, end));
  if (when.today !== today) return null;
  const places = { option: when.option, environment: environment.NESTLOG_JOURNALS, here };
  if (when.folder !== folderOf(places) || when.fingerprint !== fingerprint(loadRoom(when.folder)))
    return null;
  return body.slice(end + 1);
}

function folderOf(places: Parameters<typeof roomFolder>[0]): string | null {
  try {
    return roomFolder(places);
  } catch (error) {
    if (error instanceof UsageError) return null;
    throw error;
  }
}
