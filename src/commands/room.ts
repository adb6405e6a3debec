import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { setFlagsFromString } from 'node:v8';
import type { Day } from '../days.ts';
import { byPlace } from '../findings/finding.ts';
import { openCache } from '../journal/cache.ts';
import { loadRoom } from '../journal/load.ts';
import { type RoomRecord, readRoom, readSource, type SourceFile } from '../journal/record.ts';
import { untold } from '../journal/untold.ts';
import { type Room, understandRoom } from '../room/fold.ts';
import { unknownSkips } from '../rules/agenda/skips.ts';
import { massFindings } from '../rules/growth/findings.ts';
import { stockFindings } from '../rules/stock/findings.ts';
import { sumBy } from '../statistics/sums.ts';
import { build } from './build.ts';
import type { Context } from './context.ts';

/** What every command begins with: the room's files, read and understood. */
export interface OpenRoom {
  files: SourceFile[];
  record: RoomRecord;
  room: Room;
}

export type Asked = Pick<Context, 'journals' | 'day' | 'today' | 'cache' | 'progress'>;

/** More files than this are kept in several parts, of which a morning writes few. */
const MANY = 64;

/** Bytes of all files together: a club's records, not those of one keeper. */
const LARGE = 10_000_000;

/**
 * By how many per cent memory may grow before V8 looks through it again. On a machine with much of it V8 lets it grow up to
 * fourfold; of records nearly all is still needed, so that waiting only makes the program larger. A third less memory at
 * 100,000 clutches, for a twentieth more time; a small room would only lose the time.
 */
const GROWTH = 25;

function isLarge(files: readonly SourceFile[]): boolean {
  return sumBy(files, (file) => ('text' in file ? (file.size ?? 0) : 0)) > LARGE;
}

/** The file in which the readings of a room are kept. */
function cacheOf(folder: string, journals: string): string {
  return join(folder, `${createHash('sha256').update(journals).digest('hex').slice(0, 16)}.cache`);
}

/**
 * Reads the room's folder and understands it as known on the day stood on.
 *
 * @param forOthers for a page, which gets about: what the keeper marked private is not told
 */
export function openRoom(
  { journals, day, today, cache, progress }: Asked,
  { forOthers = false } = {},
): OpenRoom {
  const files = loadRoom(journals);
  if (isLarge(files)) setFlagsFromString(`--heap-growing-percent=${GROWTH}`);
  const parts = files.length > MANY ? 16 : 1;
  const readings = cache === undefined ? null : openCache(cacheOf(cache, journals), build, readSource, parts);
  const read = readings?.read ?? readSource;
  let done = 0;
  const written = readRoom(files, { day, today }, (file) => {
    progress?.(`reading journals: ${done++} of ${files.length}`);
    return read(file);
  });
  readings?.save();
  const record = forOthers ? untold(written) : written;
  progress?.('understanding what they say');
  return { files, record, room: understandAll(record, { day, today }) };
}

/** Understands a room, with the findings that take the rules to see. */
export function understandAll(record: RoomRecord, clock: { day: Day; today: Day }): Room {
  const room = understandRoom(record, clock);
  room.findings = [
    ...room.findings,
    ...unknownSkips(record),
    ...stockFindings(record, room),
    ...massFindings(room),
  ].sort(byPlace);
  return room;
}
