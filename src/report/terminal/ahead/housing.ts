import type { Housing, Leaving, WeanedPlace } from '../../../rules/ahead/housing.ts';
import { dateSpan, shortDate } from '../dates.ts';
import { estimateText, indented, type Page } from './page.ts';

/** Where the young will have to live once they feed themselves. */
export function housingLines({ place, leaving, empty }: Housing, page: Page): string[] {
  const lines = [
    ...(place === null ? [] : placeLines(place, page)),
    ...leaving.flatMap((one) => leavingLines(one, page)),
  ];
  if (lines.length === 0) return [];
  const free =
    empty.length === 0
      ? 'No housing of the record stands empty.'
      : `Nobody lives today, by the record, in ${empty.join(', ')}.`;
  return [
    page.look.heading('Room for the young that feed themselves'),
    ...lines,
    ...indented(free, page),
    ...indented(
      'Young stay with who feeds them until they feed themselves; then they should be out before the next hatch.',
      page,
      2,
      0,
    ).map(page.look.muted),
  ];
}

function placeLines(place: WeanedPlace, page: Page): string[] {
  const { housing, went, moved, now, most, mostOn, weeks } = place;
  const last = weeks.at(-1);
  const held =
    most === now
      ? 'the most it ever held'
      : `the most it ever held is ${most} (${shortDate(mostOn, page.day)})`;
  const usual = `${housing}, where ${went} of ${moved} young went so far: ${now} birds now, ${held}.`;
  if (last === undefined) return indented(usual, page);
  const then = `If all of them go there and nobody leaves it, ${estimateText(last.birds)} by ${shortDate(last.to, page.day)}`;
  const sure = weeks.find(({ birds }) => birds.low > most);
  const maybe = weeks.find(({ birds }) => birds.high > most);
  const short =
    maybe === undefined
      ? 'no more than it has held before'
      : `more than ever from the week to ${shortDate(maybe.to, page.day)} on at the earliest${sure === undefined ? '' : `, all but surely from the week to ${shortDate(sure.to, page.day)}`}`;
  return [...indented(`${usual} ${then}: ${short}.`, page)];
}

function leavingLines(one: Leaving, page: Page): string[] {
  const { pair, clutch, housing, ready, young, days, nextHatch, nextClutch } = one;
  const where = `${clutch.startsWith(pair) ? clutch : `${pair} (${clutch})`} · ${housing ?? 'housing not recorded'}`;
  const who = [
    ...(ready > 0 ? [`${ready} feed themselves and are still there`] : []),
    ...(days === null
      ? []
      : [`${estimateText(young)} to come of it ${dateSpan(days.from, days.to, page.day)}`]),
  ].join('; ');
  const next =
    nextHatch !== null
      ? `; next hatch ${dateSpan(nextHatch.from, nextHatch.to, page.day)}`
      : nextClutch === null
        ? ''
        : `; ${nextClutch} is under way`;
  return indented(`${where}: ${who}${next}`, page);
}
