import { expect } from 'vitest';
import { formatDay } from '../../../src/days.ts';
import type { ReadOne } from '../../../src/journal/record.ts';
import type { WarningLine } from '../../../src/rules/agenda/item.ts';
import { broodsOf } from '../../../src/rules/brood.ts';
import { learnedDurations } from '../../../src/rules/durations.ts';
import { warnings, warningsOf } from '../../../src/rules/warnings/index.ts';
import { type View, viewOf } from '../../../src/rules/warnings/warning.ts';
import { day, type Files, readOnce, room } from '../../rooms.ts';

export type Kind = (typeof warnings)[number]['kind'];

/** A room that stands in the test as text, as its warnings look at it. */
export function view(files: Files, on: string): View {
  const known = room(files, on);
  return viewOf(known, broodsOf(known, learnedDurations(known)));
}

/** Every warning of such a room on a day. Whatever its kind, a line keeps the promises of all warnings. */
export function morning(files: Files, on: string, read?: ReadOne): WarningLine[] {
  const known = room(files, on, read);
  const lines = warningsOf(known, broodsOf(known, learnedDurations(known)));
  for (const line of lines) keepsPromises(line, on);
  return lines;
}

/** The lines of one kind. */
export function warned(files: Files, kind: Kind, on: string, read?: ReadOne): WarningLine[] {
  return morning(files, on, read).filter((line) => line.kind === kind);
}

/** The one line of a kind: level, text and check. */
export function line(files: Files, kind: Kind, on: string): Pick<WarningLine, 'level' | 'text' | 'check'> {
  const lines = warned(files, kind, on);
  expect(lines, `${kind} on ${on}`).toHaveLength(1);
  const { level, text, check } = lines[0] as WarningLine;
  return { level, text, check };
}

/**
 * The days on which a kind of warning stands, as known on each of them: `03-20 … 03-27 watch`. Several lines of one day
 * are told apart by their levels.
 */
export function spell(files: Files, kind: Kind, from: string, to: string): string[] {
  const runs: { first: number; last: number; level: string }[] = [];
  const read = readOnce();
  for (let on = day(from); on <= day(to); on++) {
    const lines = warned(files, kind, formatDay(on), read);
    if (lines.length === 0) continue;
    const level = lines.map((one) => one.level).join(' ');
    const run = runs.at(-1);
    if (run?.last === on - 1 && run.level === level) run.last = on;
    else runs.push({ first: on, last: on, level });
  }
  return runs.map(({ first, last, level }) => {
    const [a, b] = [first, last].map((on) => formatDay(on).slice(5));
    return `${a === b ? a : `${a} … ${b}`} ${level}`;
  });
}

/** A room of one pair of lavender waxbills with this log. */
export function waxbills(log: string, head = ''): string {
  return pair('LW-1', 'lavender waxbill', log, head);
}

/** A pair's journal: its log's lines without the dash, one a line. */
export function pair(id: string, species: string, log: string, head = ''): string {
  const lines = (text: string) =>
    text
      .split('\n')
      .map((one) => one.trim())
      .filter((one) => one !== '');
  return [
    `pair: ${id}`,
    `species: ${species}`,
    ...lines(head),
    'log:',
    ...lines(log).map((one) => `  - {${one}}`),
  ].join('\n');
}

function keepsPromises({ kind, level, text, check, date }: WarningLine, on: string): void {
  const words = warnings.find((one) => one.kind === kind);
  expect(words?.levels, kind).toContain(level);
  expect(text, kind).toMatch(/^\S.*[.?]$/);
  expect(check, kind).toMatch(/^\S.*[^.]$/);
  expect(`${text} ${check}`, kind).not.toMatch(/undefined|NaN|null| {2}|\.\./);
  if (words?.health) expect(`${text} ${check}`, kind).toContain('avian vet');
  expect(date, kind).toBeLessThanOrEqual(day(on));
}

/**
 * A nest of two species: Bengalese finches that rear two chicks of their own, hatched on 14 March, and two lavender waxbills
 * of the same day that were put to them. What then happened there stands in `log`.
 */
export function mixedNest(log = ''): Files {
  return {
    'BF-1': pair(
      'BF-1',
      'Bengalese finch',
      `date: 2026-03-01, laid: 2\n date: 2026-03-13, checked\n date: 2026-03-14, hatched: all\n ${log}`,
    ),
    'LW-1': waxbills(
      'date: 2026-03-01, laid: 2\n date: 2026-03-13, checked\n date: 2026-03-14, hatched: all\n date: 2026-03-15, fostered: {BF-1: all}',
    ),
  };
}
