import type { Day } from '../../../days.ts';
import { grouped } from '../../../grouped.ts';
import type { AgendaItem } from '../../../rules/agenda/item.ts';
import { stated } from '../../../words.ts';
import { dateSpan, relativeDay, weekdayDate } from '../dates.ts';
import type { Row } from './fold.ts';
import { ownerIn, type Said } from './where.ts';

/**
 * Why a row stands there, a list of phrases a line: its window, a forecast's likely day, and for each item what the
 * dates rest on.
 */
export function reasons(row: Row, standing: Day, said: Said): string[][] {
  const [item] = row;
  const window = windowOf(item, standing);
  const species = said.species || row.some((each) => each.species !== item.species) ? null : item.species;
  const clutch = row.length > 1 || item.clutch === null ? null : `clutch ${item.clutch}`;
  const nest = stated([species, clutch], ', ');
  const phrases = nest === '' ? [] : [nest];
  const told = grouped(row, restsOn);
  if (told.size === 1) return [[...window, ...phrases, restsOn(item)]];
  const apart = [...told].map(([why, some]) => [
    `${some.map((each) => ownerIn(row, each)).join(', ')}: ${why}`,
  ]);
  return [[...window, ...phrases], ...apart].filter((line) => line.length > 0);
}

const restsOn = ({ why, basis }: AgendaItem) => (basis === null ? why : `${why} (${basis})`);

/** Nothing where the words at the left of the line say it already. */
function windowOf({ from, to, likely, state }: AgendaItem, standing: Day): string[] {
  if (from === to && state !== 'late') return [];
  const span = dateSpan(from, to, standing);
  if (likely === null) return [span];
  const near = Math.abs(likely - standing) <= 1;
  return [`${span}, likely ${near ? relativeDay(likely, standing) : weekdayDate(likely, standing)}`];
}
