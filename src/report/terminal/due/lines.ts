import { max } from 'd3-array';
import type { Day } from '../../../days.ts';
import type { AgendaItem } from '../../../rules/agenda/item.ts';
import { lateness, relativeDay, shortDate, weekdayDate } from '../dates.ts';
import type { Page } from '../page.ts';
import type { Meaning, Styles } from '../style.ts';
import { flow, pad, widthOf, wrap } from '../width.ts';
import type { Row } from './fold.ts';
import { reasons } from './reason.ts';
import { type Said, where } from './where.ts';

/** What every block of a morning is laid out with. */
export interface DuePage extends Page {
  /** The day stood on. */
  day: Day;
  /** Columns of the words at the left: how late, until when, which day. */
  gutter: number;
}

const MARGIN = 2;
const GAP = 2;
/** Narrower than this, two columns beside each other are harder to read than one below the other. */
const TWO_COLUMNS = 56;

/** The words at the left of an item: they alone say how pressing it is. */
export function gutterWords({ state, from, to }: AgendaItem, day: Day): string {
  if (state === 'coming') return from === day + 1 ? relativeDay(from, day) : weekdayDate(from, day);
  if (to === null) return state === 'late' ? 'late' : 'now';
  if (state === 'late') return lateness(to, day);
  if (to > day) return `to ${shortDate(to, day)}`;
  return from === to ? 'today' : 'last day';
}

/** Words at the left of the first of several lines. */
export function besideGutter(
  words: string,
  meaning: Meaning,
  lines: readonly string[],
  page: DuePage,
): string[] {
  const blank = ' '.repeat(MARGIN + page.gutter + GAP);
  const first = `${' '.repeat(MARGIN)}${page.look[meaning](words)}${' '.repeat(page.gutter - widthOf(words) + GAP)}`;
  return lines.map((line, index) => ((index === 0 ? first : blank) + line).trimEnd());
}

/** Columns to the right of the words at the left. */
export function bodyWidth({ width, gutter }: DuePage): number {
  return width - MARGIN - gutter - GAP;
}

interface RowOptions {
  said: Said;
  /** Columns for what to do, the same in all rows of a block. */
  column: number;
  /** Whether the row above has the same words at the left. */
  repeats: boolean;
}

/** One row: what to do and where, and below it, quieter, why. */
export function rowLines(row: Row, { said, column, repeats }: RowOptions, page: DuePage): string[] {
  const { look } = page;
  const [item] = row;
  const body = bodyWidth(page);
  const places = where(row, said);
  const lines = [
    ...(body < TWO_COLUMNS
      ? stacked(item.say, places, body, look)
      : columns(item.say, places, { column, body, look })),
    ...reasons(row, page.day, said).flatMap((phrases) =>
      flow(phrases, body - GAP).map((line) => `${' '.repeat(GAP)}${look.muted(line)}`),
    ),
  ];
  return besideGutter(repeats ? '' : gutterWords(item, page.day), item.state, lines, page);
}

/** How wide the column of what to do has to be for these rows, and at most may be. */
export function taskColumn(rows: readonly Row[], page: DuePage): number {
  const widest = max(rows, ([{ say }]) => widthOf(say)) ?? 0;
  return Math.min(widest, Math.floor(bodyWidth(page) * 0.55));
}

function columns(
  say: string,
  places: string[][],
  room: { column: number; body: number; look: Styles },
): string[] {
  const { column, body, look } = room;
  const left = wrap(say, column, { hanging: 2 });
  const right = places.flatMap((phrases) => flow(phrases, body - column - GAP));
  return Array.from({ length: Math.max(left.length, right.length) }, (_, index) => {
    const task = left[index] ?? '';
    const gap = pad('', column - widthOf(task) + GAP);
    return `${look.task(task)}${gap}${right[index] ?? ''}`;
  });
}

function stacked(say: string, places: string[][], body: number, look: Styles): string[] {
  const lines = places.flatMap((phrases) => flow(phrases, body));
  const [only = ''] = lines;
  if (lines.length <= 1 && widthOf(say) + GAP + widthOf(only) <= body) return [`${look.task(say)}  ${only}`];
  return [...wrap(say, body, { hanging: 2 }).map(look.task), ...lines];
}
