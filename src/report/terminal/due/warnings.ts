import type { Day } from '../../../days.ts';
import { naturally } from '../../../findings/naturally.ts';
import type { WarningLevel, WarningLine } from '../../../rules/agenda/item.ts';
import { stated } from '../../../words.ts';
import { relativeDay, shortDate } from '../dates.ts';
import { wrap } from '../width.ts';
import { besideGutter, bodyWidth, type DuePage } from './lines.ts';

/** The word that says how much a warning presses, the most pressing first. */
export const LEVEL_WORDS: Record<WarningLevel, string> = { act: 'ACT NOW', watch: 'WATCH', note: 'note' };
/** What a keeper is to make of it. */
export const LEVEL_MEANS: Record<WarningLevel, string> = {
  act: 'a bird may suffer today',
  watch: 'look today',
  note: 'know',
};
const LEVELS = Object.keys(LEVEL_WORDS) as WarningLevel[];

/** Warnings, the most pressing first: what was seen and why it matters, and what to check. */
export function warningLines(warnings: readonly WarningLine[], page: DuePage): string[] {
  return pressingFirst(warnings).flatMap((warning) => oneWarning(warning, page));
}

/** In the order in which they are shown. */
export function pressingFirst(warnings: readonly WarningLine[]): WarningLine[] {
  return [...warnings].sort(
    (a, b) =>
      LEVELS.indexOf(a.level) - LEVELS.indexOf(b.level) ||
      b.date - a.date ||
      naturally(a.pair ?? a.bird ?? '', b.pair ?? b.bird ?? ''),
  );
}

/** Whom a warning is about, and of which day it is. */
export function warningHead({ pair, bird, clutch, date }: WarningLine, day: Day): string {
  const whom = stated([pair, clutch === null ? null : `clutch ${clutch}`, bird], ', ');
  const when = date === day ? relativeDay(date, day) : shortDate(date, day);
  return `${whom === '' ? 'the room' : whom} · ${when}`;
}

function oneWarning(warning: WarningLine, page: DuePage): string[] {
  const { level, text, check } = warning;
  const body = bodyWidth(page);
  const lines = [
    ...wrap(warningHead(warning, page.day), body, { hanging: 2 }).map(page.look.task),
    ...wrap(text, body),
    ...wrap(`check: ${check}`, body, { hanging: 2 }),
  ];
  return besideGutter(LEVEL_WORDS[level], level, lines, page);
}
