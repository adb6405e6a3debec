import type { Day } from '../../../days.ts';
import type { Leaving } from '../../../rules/ahead/housing/leaving.ts';
import type { WeanedPlace } from '../../../rules/ahead/housing/weaned-place.ts';
import type { Housing } from '../../../rules/ahead/housing.ts';
import { count } from '../../../words.ts';
import { columns } from '../columns.ts';
import { dateSpan, shortDate } from '../dates.ts';
import { aside } from '../page.ts';
import { flow } from '../width.ts';
import { type DatedPage, estimateText, item } from './page.ts';

/** Where the young will have to live once they feed themselves. */
export function housingLines({ place, leaving, occupied, empty }: Housing, page: DatedPage): string[] {
  const lines = [...(place === null ? [] : placeLines(place, page)), ...leavingLines(leaving, page)];
  if (lines.length === 0) return [];
  const free =
    empty.length === 0
      ? 'No housing of the record stands empty.'
      : `Nobody lives today, by the record, in ${empty.join(', ')}.`;
  return [
    page.look.heading('Room for the young that feed themselves'),
    ...lines,
    ...occupiedLines(occupied, page),
    ...item(free, page),
    ...aside(
      'Young stay with who feeds them until they feed themselves; then they move out before the next hatch. In an aviary of many pairs they may stay: see who drives whom.',
      page,
    ),
  ];
}

/** `aviary: 12 (19)`: now, and the most that ever lived there where that is more. */
function occupiedLines(occupied: Housing['occupied'], page: DatedPage): string[] {
  if (occupied.length === 0) return [];
  const each = occupied.map(
    ({ housing, now, most }) => `${housing}: ${now}${most > now ? ` (${most})` : ''}`,
  );
  return [
    ...item('Birds that feed themselves today, in brackets the most that ever lived there:', page),
    ...flow(each, page.width - 4).map((line) => `    ${line}`),
  ];
}

function placeLines(place: WeanedPlace, page: DatedPage): string[] {
  const { housing, went, moved, now, most, mostOn, weeks } = place;
  const last = weeks.at(-1);
  const held =
    most === now
      ? 'the most it ever held'
      : `the most it ever held is ${most} (${shortDate(mostOn, page.day)})`;
  const usual = `${housing}, where ${went} of ${moved} young went so far: ${count(now, 'bird')} now, ${held}.`;
  if (last === undefined) return item(usual, page);
  const then = `If all of them go there and nobody leaves it, ${estimateText(last.birds)} by ${shortDate(last.to, page.day)}`;
  const sure = weeks.find(({ birds }) => birds.low > most);
  const maybe = weeks.find(({ birds }) => birds.high > most);
  const short =
    maybe === undefined
      ? 'no more than it has held before'
      : `more than ever from the week to ${shortDate(maybe.to, page.day)} on at the earliest${sure === undefined ? '' : `, all but surely from the week to ${shortDate(sure.to, page.day)}`}`;
  return [...item(`${usual} ${then}: ${short}.`, page)];
}

/** Clutch by clutch, those first who can go today. */
function leavingLines(leaving: readonly Leaving[], { width, day, look }: DatedPage): string[] {
  if (leaving.length === 0) return [];
  const when = ({ days }: Leaving) => days?.from ?? Number.POSITIVE_INFINITY;
  const rows = [...leaving]
    .sort((a, b) => Number(b.ready > 0) - Number(a.ready > 0) || when(a) - when(b))
    .map((one) => [
      one.clutch,
      `${one.housing ?? '?'}${one.clutch.startsWith(`${one.pair}/`) ? '' : ` (${one.pair})`}`,
      one.ready === 0 ? '' : String(one.ready),
      one.days === null ? '' : estimateText(one.young),
      one.days === null ? '' : dateSpan(one.days.from, one.days.to, day),
      nextText(one, day),
    ]);
  const next = rows.some((row) => row[5] !== '') ? 'next clutch' : '';
  const [head = '', ...lines] = columns([['clutch', 'lives in', 'ready', 'to come', 'when', next], ...rows], {
    width,
    indent: 2,
    cut: 1,
  });
  return [look.muted(head), ...lines];
}

function nextText({ nextClutch, nextHatch }: Leaving, day: Day): string {
  if (nextHatch !== null) return `hatches ${dateSpan(nextHatch.from, nextHatch.to, day)}`;
  return nextClutch === null ? '' : 'under way';
}
