import { createHash } from 'node:crypto';
import { join } from 'node:path';
import type { Day } from '../days.ts';
import { byPlace } from '../findings/finding.ts';
import { openCache } from '../journal/cache.ts';
import { loadRoom } from '../journal/load.ts';
import { type RoomRecord, readFile, readRoom } from '../journal/record.ts';
import { type Room, understandRoom } from '../room/fold.ts';
import { unknownSkips } from '../rules/agenda/skips.ts';
import { massFindings } from '../rules/growth/findings.ts';
import { stockFindings } from '../rules/stock/findings.ts';
import type { Context } from './context.ts';

/** What every command begins with: the room's files, read and understood. */
export interface OpenRoom {
  record: RoomRecord;
  room: Room;
}

type Asked = Pick<Context, 'journals' | 'day' | 'today' | 'cache'>;

/** Changes with everything that is compiled into the program; set by the build. */
declare const NESTLOG_BUILD: string | undefined;

function build(): string {
  return typeof NESTLOG_BUILD === 'string' ? NESTLOG_BUILD : 'not built';
}

/** The file in which the readings of a room are kept. */
function cacheOf(folder: string, journals: string): string {
  return join(folder, `${createHash('sha256').update(journals).digest('hex').slice(0, 16)}.cache`);
}

/** Reads the room's folder and understands it as known on the day stood on. */
export function openRoom({ journals, day, today, cache }: Asked): OpenRoom {
  const files = loadRoom(journals);
  const readings = cache === undefined ? null : openCache(cacheOf(cache, journals), build(), readFile);
  const record = readRoom(files, { day, today }, readings?.read);
  readings?.save();
  return { record, room: understandAll(record, { day, today }) };
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
