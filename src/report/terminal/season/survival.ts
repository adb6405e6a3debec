import type { Block } from '../../../rules/season/block.ts';
import type { ChickSurvival, SurvivalRow } from '../../../rules/season/survival.ts';
import { pad } from '../width.ts';
import { count } from '../words.ts';
import { days, number, percent, percentRange } from './figures.ts';
import { aside, type Page, sentence } from './page.ts';
import { stepPlot } from './plots.ts';

const HEIGHT = 4;
/** Ages in one column under the curve. */
const LISTED = 12;

/** How chicks survived by age: the curve, each age at which any died, and the days to watch. */
export function survivalLines({ survival, lives }: Pick<Block, 'survival' | 'lives'>, page: Page): string[] {
  const { rows, followed, danger } = survival;
  if (followed === 0) return sentence('No chick was followed from a known day of hatching.', page);
  const oldest = Math.max(...lives.map(({ left, right }) => (Number.isFinite(right) ? right : left)));
  if (rows.length === 0) {
    return sentence(
      `None of ${count(followed, 'chick')} died while it was followed, the longest until day ${oldest}.`,
      page,
    );
  }
  const watch =
    danger === null
      ? []
      : sentence(
          `Watch ${days(danger.from, danger.to)}: ${number(danger.died)} of ${count(Math.round(danger.of), 'death')} fell there, among ${count(Math.round(danger.atRisk), 'chick')} alive when it began.`,
          page,
        );
  return [
    ...stepPlot(rows, { to: Math.max(oldest, 1), width: Math.min(70, page.width - 2), height: HEIGHT }).map(
      (line) => `  ${line}`,
    ),
    ...rows.slice(0, LISTED).map(rowLine),
    ...(rows.length > LISTED ? aside(`and ${count(rows.length - LISTED, 'later age')}`, page) : []),
    ...watch,
    ...caveats(survival, page),
  ];
}

function rowLine({ from, time, atRisk, died, surviving, low, high }: SurvivalRow): string {
  const limits = low === null || high === null ? '' : ` (${percentRange(low, high)})`;
  const dead = pad(`${number(died)} of ${number(atRisk)} died`, 18);
  return `  ${pad(days(from, time), 12)}${dead}${percent(surviving)} left${limits}`;
}

function caveats({ estimated }: ChickSurvival, page: Page): string[] {
  return estimated
    ? aside(
        'Some died between looks more than a day apart: their ages are the likeliest ones, and the numbers need not be whole.',
        page,
      )
    : [];
}
