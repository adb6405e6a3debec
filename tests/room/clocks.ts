import { eggClock, sittingStart } from '../../src/room/clock.ts';
import { day, type Files, room } from '../rooms.ts';
import { clutchIn, days, eggIn, journal } from './facts.ts';

/** When sitting began, as known on a day: `03-03…03-04 from e3–e4`, or null. */
export function sitting(log: string, on: string, species = 'lavender waxbill'): string | null {
  const known = room({ P: journal('P-1', species, log) }, on);
  const start = sittingStart(clutchIn(known, 'P-1/1'), day(on));
  return start && `${days(start.span)} ${start.inferred ? `from ${start.eggs}` : 'seen'}`;
}

/** Since when an egg counts as sat on: `03-03…03-04 running`, or null. */
export function clock(files: Files, egg: string, on: string): string | null {
  const known = eggClock(eggIn(room(files, on), egg), day(on));
  return known && `${days(known.start)} ${known.running ? 'running' : 'stopped'}`;
}

/** An egg on each of these days of March. */
export const daily = (from: number, to: number) =>
  Array.from({ length: to - from + 1 }, (_, i) => `date: 2026-03-0${from + i}, laid: 1`).join('\n');
