import type { Day } from '../../days.ts';
import type { AgendaItem } from '../../rules/agenda/item.ts';
import { stated } from '../../words.ts';
import { dateSpan, lateness, longDate, weekdayDate } from '../terminal/dates.ts';
import { subject } from '../terminal/due/where.ts';

/** Where a part of a clutch is cared for without its parents, as the agenda calls these places. */
const APART: Record<string, string> = { incubator: ', incubator', hand: ', by hand' };

/**
 * What a calendar shows in its cell: whose it is and what to do, and how sure a forecast is of its day. Of a clutch that
 * is in two places each part says where, or its entries would look the same.
 */
export function summaryOf(item: AgendaItem, standing: Day): string {
  const { state, say, likely, housing } = item;
  const late = state === 'late' ? 'late · ' : '';
  const day = likely === null ? '' : `, likely ${weekdayDate(likely, standing)}`;
  return `${late}${subject(item)}${APART[housing ?? ''] ?? ''}: ${say}${day}`;
}

/** What it shows when the entry is opened: the window, why, on what it rests, what ends it, and of when all that is. */
export function descriptionOf(item: AgendaItem, doneBy: string | null, standing: Day): string {
  const { species, clutch, housing, why, basis } = item;
  const whose = [species, clutch === null ? null : `clutch ${clutch}`, housing];
  const lines = [
    stated(whose, ', '),
    windowWords(item, standing),
    `Why: ${why}`,
    basis === null ? '' : `Rests on: ${basis}`,
    doneBy === null ? '' : `Done by: ${doneBy}`,
    `As known on ${longDate(standing)}.`,
  ];
  return lines.filter((line) => line !== '').join('\n');
}

function windowWords({ from, to, likely, state }: AgendaItem, standing: Day): string {
  const span = dateSpan(from, to, standing);
  if (to === null) return `When: ${span}; no end is foreseen, it goes on until the journal says so`;
  const late = state === 'late' ? `; ${lateness(to, standing)}` : '';
  return `When: ${span}${likely === null ? '' : `, likely ${weekdayDate(likely, standing)}`}${late}`;
}
