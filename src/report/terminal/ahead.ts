import { count, stated } from '../../words.ts';
import type { AheadPage } from '../ahead.ts';
import { basisLines } from './ahead/basis.ts';
import { eventLines, restLines } from './ahead/birds.ts';
import { housingLines } from './ahead/housing.ts';
import type { DatedPage } from './ahead/page.ts';
import { ringLines } from './ahead/rings.ts';
import { speciesLines, weekLines } from './ahead/young.ts';
import { longDate, weekdayDate } from './dates.ts';
import { findingsSummary } from './findings.ts';
import { pageWidth, type Screen, textOf } from './page.ts';
import { styles } from './style.ts';
import { visibleData } from './visible.ts';
import { wrap } from './width.ts';

/** What is laid out for less gets longer lines; more is not used, as long lines are hard to read. */
const NARROWEST = 40;
const WIDEST = 100;

/** What the weeks ahead will need: young, rings, room, rest; and what it rests on. */
export function aheadText(ahead: AheadPage, { width, color }: Screen): string {
  const { findings } = ahead;
  const shown = visibleData({ ...ahead, findings: [] });
  const look = styles(color);
  const page: DatedPage = { day: ahead.day, width: pageWidth(width, NARROWEST, WIDEST), look };
  const some = ahead.eggs + ahead.chicks > 0;
  const blocks = [
    opening(shown, page),
    findingsSummary(findings, page.width, look),
    some ? weekLines(shown, page) : [],
    some ? speciesLines(shown, page) : [],
    ringLines(shown.rings, page),
    housingLines(shown.housing, page),
    restLines(shown.rest, page),
    eventLines(shown.events, page),
    some ? basisLines(shown, page) : [],
  ];
  return textOf(blocks);
}

function opening(
  { day, room, until, eggs, chicks, clutches, pastTheirTime, uncounted }: AheadPage,
  page: DatedPage,
): string[] {
  const { width, look } = page;
  const title = stated([longDate(day), room]);
  const here = [...(eggs > 0 ? [count(eggs, 'egg')] : []), ...(chicks > 0 ? [`${chicks} young`] : [])];
  const from =
    here.length === 0
      ? `No eggs that may hatch and no young in the nests, so none to expect up to ${weekdayDate(until, day)}.`
      : `Until ${weekdayDate(until, day)}, from the ${here.join(' and ')} of ${count(clutches, 'clutch', 'clutches')} today. Clutches that are not begun yet are in no figure. Behind each mean the range that holds it 8 times in 10.`;
  const over = pastTheirTime.map(({ clutch, eggs: number }) => `${clutch} (${count(number, 'egg')})`);
  return [
    ...wrap(title, width).map(look.heading),
    ...wrap(from, width),
    ...(over.length === 0
      ? []
      : wrap(
          `Not counted, as their time is over and nobody wrote what became of them: ${over.join(', ')}.`,
          width,
        )),
    ...(uncounted.length === 0
      ? []
      : wrap(
          `Nobody counted ${uncounted.join(', ')}: eggs are taken for a usual clutch, young that were heard for one.`,
          width,
        )),
  ];
}
