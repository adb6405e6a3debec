import { naturally } from '../../../findings/naturally.ts';
import { grouped } from '../../../grouped.ts';
import type { AgendaItem, TaskState } from '../../../rules/agenda/item.ts';

/** One line of the morning: an item, or several that ask for the same thing in the same window. */
export type Row = [AgendaItem, ...AgendaItem[]];

const STATES: TaskState[] = ['late', 'now', 'coming'];

/** Whatever has an open end comes after what has one. */
const lastDay = ({ to }: AgendaItem) => to ?? Number.POSITIVE_INFINITY;

/** Late before now before coming; in each the most pressing first; then as one walks: by housing and pair. */
function pressing(a: AgendaItem, b: AgendaItem): number {
  const byDay = a.state === 'coming' ? a.from - b.from : 0;
  return (
    STATES.indexOf(a.state) - STATES.indexOf(b.state) ||
    byDay ||
    Math.sign(lastDay(a) - lastDay(b) || 0) ||
    a.from - b.from ||
    naturally(a.housing ?? '', b.housing ?? '') ||
    naturally(a.pair ?? a.bird ?? '', b.pair ?? b.bird ?? '') ||
    naturally(a.task, b.task)
  );
}

/** Items in the order in which they are done, those that share task, words, state and window on one line. */
export function fold(items: readonly AgendaItem[]): Row[] {
  const rows = grouped([...items].sort(pressing), ({ task, say, state, from, likely, to, pair, bird }) =>
    JSON.stringify([task, say, state, from, likely, to, pair === null, bird === null]),
  );
  return [...rows.values()];
}
