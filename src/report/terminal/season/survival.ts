import type { Block } from '../../../rules/season/block.ts';
import type { SurvivalRow } from '../../../rules/season/survival.ts';
import { count } from '../../../words.ts';
import { days, number, percent, percentRange } from '../figures.ts';
import { aside, indented, type Page } from '../page.ts';
import { pad } from '../width.ts';
import { stepPlot } from './plots.ts';

const HEIGHT = 4;
/** Ages in one column under the curve. */
const LISTED = 12;

/** How chicks survived by age: the curve, each age at which any died, and the days to watch. */
export function survivalLines(block: Pick<Block, 'survival' | 'lives'>, page: Page): string[] {
  const { rows } = block.survival;
  const { instead, watch, caveat } = survivalWords(block);
  if (instead !== null) return indented(instead, page);
  const to = Math.max(oldestOf(block), 1);
  return [
    ...stepPlot(rows, { to, width: Math.min(70, page.width - 2), height: HEIGHT }).map((line) => `  ${line}`),
    ...rows.slice(0, LISTED).map(rowLine),
    ...(rows.length > LISTED ? aside(`and ${count(rows.length - LISTED, 'later age')}`, page) : []),
    ...(watch === null ? [] : indented(watch, page)),
    ...(caveat === null ? [] : aside(caveat, page)),
  ];
}

/** What is said of the curve: instead of it where there is none, and beside it. */
export function survivalWords({ survival, lives }: Pick<Block, 'survival' | 'lives'>) {
  const { rows, followed, danger, estimated } = survival;
  const until = `the longest until day ${oldestOf({ lives })}`;
  return {
    instead:
      followed === 0
        ? 'No chick was followed from a known day of hatching.'
        : rows.length === 0
          ? `None of ${count(followed, 'chick')} died while it was followed, ${until}.`
          : null,
    watch:
      danger === null
        ? null
        : `Watch ${days(danger.from, danger.to)}: ${number(danger.died)} of ${count(Math.round(danger.of), 'death')} fell there, among ${count(Math.round(danger.atRisk), 'chick')} alive when it began.`,
    caveat: estimated
      ? 'Some died between looks more than a day apart: their ages are the likeliest ones, and the numbers need not be whole.'
      : null,
  };
}

function oldestOf({ lives }: Pick<Block, 'lives'>): number {
  // More lives than a call can take as arguments.
  return lives.reduce(
    (oldest, { left, right }) => Math.max(oldest, Number.isFinite(right) ? right : left),
    Number.NEGATIVE_INFINITY,
  );
}

function rowLine({ from, time, atRisk, died, surviving, low, high }: SurvivalRow): string {
  const limits = low === null || high === null ? '' : ` (${percentRange(low, high)})`;
  const dead = pad(`${number(died)} of ${number(atRisk)} died`, 18);
  return `  ${pad(days(from, time), 12)}${dead}${percent(surviving)} left${limits}`;
}
