import { formatTime } from '../../journal/grammar/time-text.ts';
import type { FeedPlan } from '../../rules/feed/plan.ts';
import { sumBy } from '../../statistics/sums.ts';
import { count, stated } from '../../words.ts';
import { longDate } from './dates.ts';
import { basisLines } from './feed/basis.ts';
import { batchLines } from './feed/batches.ts';
import { buyLines } from './feed/buy.ts';
import { gramRange } from './feed/grams.ts';
import { dishTable } from './feed/table.ts';
import { housingName, whoLines } from './feed/who.ts';
import { findingsSummary } from './findings.ts';
import { indented, type Page, pageWidth, type Screen, textOf } from './page.ts';
import { styles } from './style.ts';
import { visible } from './visible.ts';
import { wrap } from './width.ts';

/** What is laid out for less gets longer lines; more is not used: it hangs on a wall, and long lines are hard to read. */
const NARROWEST = 60;
const WIDEST = 100;

/** A plan for the kitchen wall: who eats where, what goes into each dish, when to begin each batch, what to buy. */
export function feedText(plan: FeedPlan, options: Screen): string {
  const page = {
    width: pageWidth(options.width, NARROWEST, WIDEST),
    look: styles(options.color),
  };
  const blocks = [
    heading(plan, page),
    findingsSummary(plan.findings, page.width, page.look),
    ...(plan.housings.length === 0 ? [] : body(plan, page)),
    basisLines(plan, page.width, page.look),
  ];
  return textOf(blocks);
}

function heading({ day, days, room, housings }: FeedPlan, { width, look }: Page): string[] {
  const title = stated(['Feeding plan', room]);
  const end = day + days - 1;
  const when = days === 1 ? longDate(day) : `${longDate(day)} to ${longDate(end)}`;
  const nobody = housings.length === 0 ? ['Nobody is here to feed.'] : [];
  return [...wrap(visible(title), width).map(look.heading), ...wrap(when, width), ...nobody];
}

function body(plan: FeedPlan, page: Page): string[][] {
  const { width, look } = page;
  const { housings, hours, day } = plan;
  const nests = housings.filter(({ families }) => families.length > 0);
  const others = housings.filter(({ families }) => families.length === 0);
  const section = (title: string, lines: string[], says: string | null = null) =>
    lines.length === 0 ? [] : [look.now(title), ...(says === null ? [] : indented(says, page)), ...lines];
  const live = dishTable(plan, 'live', page);
  const times = hours.portions.map(formatTime).join(' ');
  return [
    section(
      'WHO EATS WHERE',
      nests.flatMap((place) => whoLines(place, day, { width: width - 2, look }).map((line) => `  ${line}`)),
    ),
    section(
      'LIVE FOOD, g in each portion',
      live,
      `${count(hours.portions.length, 'portion')} a day: ${times}. Never less while there are nestlings: take away what lies over, and give more where the dish is empty before the next.`,
    ),
    section(
      'EGG FOOD, g a day',
      dishTable(plan, 'egg', page),
      'Fresh in the morning, out again after a few hours, in heat after two.',
    ),
    section(
      'SPROUTED SEED, g a day',
      dishTable(plan, 'sprouted', page),
      'In the morning, rinsed once more; out again by evening, in heat by noon.',
    ),
    section(
      'SEED TO SPROUT',
      batchLines(plan, width),
      'Rinse morning and evening until it is given. Sour smell, slime or mould: throw the batch away.',
    ),
    section('DRY SEED, GRIT AND WATER EVERY DAY', dryLines(plan, others, page)),
    section(`TO BUY FOR ${count(plan.days, 'DAY', 'DAYS')}`, buyLines(plan, width)),
  ];
}

/** Housings in which nobody is reared, and what all birds together eat of dry seed. */
function dryLines({ daily }: FeedPlan, others: FeedPlan['housings'], page: Page): string[] {
  const birds = (place: FeedPlan['housings'][number]) => sumBy(place.adults, ({ number }) => number);
  const names = others.map((place) => `${housingName(place)} (${birds(place)})`).join(', ');
  const [first] = daily;
  const eaten = first === undefined ? '' : `, ${gramRange(first.foods.dry)} eaten a day`;
  return indented(
    `All housings${eaten}, husks not counted.${names === '' ? '' : ` Nobody to rear, so this only, and what you always add: ${names}.`}`,
    page,
  );
}
