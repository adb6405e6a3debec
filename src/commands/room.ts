import { byPlace } from '../findings/finding.ts';
import { loadRoom } from '../journal/load.ts';
import { type RoomRecord, readRoom } from '../journal/record.ts';
import { type Room, understandRoom } from '../room/fold.ts';
import { unknownSkips } from '../rules/agenda/skips.ts';
import { stockFindings } from '../rules/stock/findings.ts';
import type { Context } from './context.ts';

/** What every command begins with: the room's files, read and understood. */
export interface OpenRoom {
  record: RoomRecord;
  room: Room;
}

/** Reads the room's folder and understands it as known on the day stood on. */
export function openRoom({ journals, day, today }: Pick<Context, 'journals' | 'day' | 'today'>): OpenRoom {
  const record = readRoom(loadRoom(journals), { day, today });
  const room = understandRoom(record, { day, today });
  room.findings = [...room.findings, ...unknownSkips(record), ...stockFindings(record, room)].sort(byPlace);
  return { record, room };
}
