import { fileURLToPath } from 'node:url';
import { type Day, parseDay } from '../../src/days.ts';
import { loadRoom } from '../../src/journal/load.ts';
import { type RoomRecord, readRoom } from '../../src/journal/record.ts';
import { type Room, understandRoom } from '../../src/room/fold.ts';

/** The day on which the example room is alive. */
export const TODAY = parseDay('2026-05-17') as Day;

const FOLDER = fileURLToPath(new URL('../../journals-example', import.meta.url));

export const files = loadRoom(FOLDER);

/** The example room's record with that day as the calendar's. */
export function exampleRecord(day: Day = TODAY): RoomRecord {
  return readRoom(files, { day, today: TODAY });
}

/** The example room as known on a day. */
export function exampleRoom(day: Day = TODAY): Room {
  return understandRoom(exampleRecord(day), { day, today: TODAY });
}
