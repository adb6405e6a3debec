import { describe, expect, it } from 'vitest';
import { formatDay } from '../../../src/days.ts';
import type { ReadOne } from '../../../src/journal/record.ts';
import type { AgendaItem } from '../../../src/rules/agenda/item.ts';
import { type Brood, broodsOf } from '../../../src/rules/brood.ts';
import { learnedDurations } from '../../../src/rules/durations.ts';
import { agenda, day, type Files, readOnce, room } from '../../rooms.ts';
import { pair } from '../warnings/warned.ts';

/**
 * A species of our own with numbers that are easily counted in the head. A range of 11–13 d is the central 90 % of a
 * normal about 12 with a deviation of 2 / 3.29 = 0.61: of the eggs 20 % are out by day 11, 79 % by day 12, 99 % by
 * day 13. So the 10 % day is 11, the 50 % day 12, the 90 % day 13; fledging at 20–22 d likewise 20, 21 and 22.
 */
const PROFILE: Record<string, string> = {
  species: 'hill finch',
  scientific: 'Exemplum collinum',
  clutch: '4-5',
  'laying-interval': '1',
  'sitting-from': '3',
  incubation: '11-13',
  candling: '5-6',
  'nest-looks': 'freely',
  'live-food': 'required',
  'live-food-lead': '2',
  brooding: '7-9',
  'ring-age': '7-8',
  fledging: '20-22',
  'roosting-back': '5-10',
  restart: '5',
  independence: '30-40',
  moult: '40-120',
  'breeding-age': '9-12',
  'clutches-per-year': '3',
};

/** A room of one pair of hill finches, HF-1, with this log; the species may differ in a few values. */
export function hillFinches(log: string, but: Record<string, string> = {}, more: Files = {}): Files {
  return { 'HF-1': pair('HF-1', 'hill finch', log), ...species(but), ...more };
}

/** The file of the species, for rooms that write their journals themselves. */
export function species(but: Record<string, string> = {}): Files {
  const lines = Object.entries({ ...PROFILE, ...but }).map(([key, value]) => `${key}: ${value}`);
  return { 'species/hill-finch.yaml': `${lines.filter((line) => !line.endsWith(': ')).join('\n')}\n` };
}

/** The file of a room with one routine and perhaps a log of its own. */
export function withRoutine(routine: string, log = '  - {date: 2026-01-01, note: "begun"}\n'): Files {
  return { 'nestlog.yaml': `routines:\n  - {${routine}}\nlog:\n${log}` };
}

/** Four eggs on the first four days of March, sat on from the third. Hatch: 14 … 17 March, as e4 began on the 4th. */
export const FOUR_EGGS = `
  date: 2026-03-01, laid: 1
  date: 2026-03-02, laid: 1
  date: 2026-03-03, laid: 1, sitting: both
  date: 2026-03-04, laid: 1
`;

/** Three of them hatch on 15 March, the fourth not. */
export const THREE_CHICKS = `${FOUR_EGGS}
  date: 2026-03-15, after: 2026-03-14, hatched: [e1, e2, e3]
`;

/** All three leave the nest on 5 April. */
export const ALL_OUT = `${THREE_CHICKS}
  date: 2026-04-05, fledged: all
`;

/** The lines of a task on a day, whatever comes within so many days. */
export function lines(files: Files, task: string, on: string, days = 0, read?: ReadOne): AgendaItem[] {
  return agenda(files, on, days, read).filter((item) => item.task === task);
}

/**
 * The mornings on which a task stands, as known on each of them: `03-08 … 03-09 now`, `03-10 late`. Two lines of one
 * morning give both states.
 */
export function stands(files: Files, task: string, from: string, to: string): string[] {
  const runs: { first: number; last: number; state: string }[] = [];
  const read = readOnce();
  for (let on = day(from); on <= day(to); on++) {
    const items = lines(files, task, formatDay(on), 0, read);
    if (items.length === 0) continue;
    const state = items.map((item) => item.state).join(' ');
    const run = runs.at(-1);
    if (run?.last === on - 1 && run.state === state) run.last = on;
    else runs.push({ first: on, last: on, state });
  }
  return runs.map(({ first, last, state }) => {
    const [a, b] = [first, last].map((on) => formatDay(on).slice(5));
    return `${a === b ? a : `${a} … ${b}`} ${state}`;
  });
}

/** One row: in this room the task stands on these mornings between February and July, and on no other. */
export type Row = [what: string, files: Files, mornings: string[]];

/** Checks the rows of one task. */
export function check(task: string, rows: Row[]): void {
  describe(task, () => {
    it.each(rows)('%s', (_what, files, mornings) => {
      expect(stands(files, task, '2026-02-27', '2026-07-01')).toEqual(mornings);
    });
  });
}

/** Every brood of such a room on a day. */
export function broods(files: Files, on: string): Brood[] {
  const known = room(files, on);
  return broodsOf(known, learnedDurations(known));
}

/** The first brood of HF-1 in that place. */
export function brood(files: Files, on: string, where: Brood['where'] = 'nest'): Brood {
  const found = broods(files, on).find((one) => one.pair.id === 'HF-1' && one.where === where);
  if (found === undefined) throw new Error(`HF-1 has no brood on ${on}`);
  return found;
}
