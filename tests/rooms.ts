import { expect } from 'vitest';
import { type Day, parseDay } from '../src/days.ts';
import {
  type FileReading,
  type ReadOne,
  type RoomRecord,
  readFile,
  readRoom,
} from '../src/journal/record.ts';
import { type Room, understandRoom } from '../src/room/fold.ts';
import { agendaOf } from '../src/rules/agenda/agenda.ts';
import type { AgendaItem } from '../src/rules/agenda/item.ts';
import { broodsOf } from '../src/rules/brood.ts';
import { learnedDurations } from '../src/rules/durations.ts';

/** A day of a test, from its ISO text. */
export function day(text: string): Day {
  const parsed = parseDay(text);
  if (parsed === null) throw new Error(`no such day: ${text}`);
  return parsed;
}

/** Removes the indent that the text has from standing in a test. */
export function dedent(text: string): string {
  const lines = text
    .replace(/^\n/, '')
    .replace(/\n\s*$/, '\n')
    .split('\n');
  const indents = lines.filter((line) => line.trim() !== '').map((line) => /^ */.exec(line)?.[0].length ?? 0);
  const indent = Math.min(...indents);
  return lines.map((line) => line.slice(indent)).join('\n');
}

/** The calendar on the wall of the tests: later than every journal in them, so that any day can be stood on. */
const TODAY = day('2029-12-31');

/** Files of a room, by path; a key without a slash or `.yaml` is a pair's journal. */
export type Files = Record<string, string>;

/** Reads a room that stands in the test as text. */
export function record(files: Files, on: string, read?: ReadOne): RoomRecord {
  const sources = Object.entries(files).map(([name, text]) => ({
    path: name.endsWith('.yaml') ? name : `pairs/${name}.yaml`,
    text: dedent(text),
  }));
  return readRoom(sources, { day: day(on), today: TODAY }, read);
}

/** Reads and understands a room that stands in the test as text, on a day. */
export function room(files: Files, on: string, read?: ReadOne): Room {
  return understandRoom(record(files, on, read), { day: day(on), today: TODAY });
}

/** The agenda of such a room on a day. */
export function agenda(files: Files, on: string, days = 7, read?: ReadOne): AgendaItem[] {
  const stood = room(files, on, read);
  const items = agendaOf(stood, broodsOf(stood, learnedDurations(stood)), days);
  for (const item of items) keepsPromises(item, day(on), days);
  return items;
}

/** What an item of the agenda promises, whatever its task. */
function keepsPromises({ task, from, to, state, say, why }: AgendaItem, on: Day, days: number): void {
  const line = `${task} ${state} ${from} ${to} on ${on}`;
  expect(say && why, line).not.toBe('');
  expect(from, line).toBeLessThanOrEqual(on + days);
  expect(to ?? from, line).toBeGreaterThanOrEqual(from);
  const expected = from > on ? 'coming' : (to ?? on) >= on ? 'now' : 'late';
  expect(state, line).toBe(expected);
}

/** Reads each file once, for tests that stand on many days of one room. */
export function readOnce(): ReadOne {
  const readings = new Map<string, FileReading>();
  return ({ path, text }) => {
    const reading = readings.get(path) ?? readFile(path, text);
    readings.set(path, reading);
    return reading;
  };
}
