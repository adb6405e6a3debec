import { max } from 'd3-array';
import type { Block } from '../../../rules/season/block.ts';
import type { Ranking } from '../../../rules/season/ranking.ts';
import type { Rate } from '../../../rules/season/rates.ts';
import { GROUP_HEADS, GROUP_MEASURES, GROUP_NOTE, type GroupMeasure, hasGroupRate } from '../../season.ts';
import { percent, percentRange } from '../figures.ts';
import { aside, indented, type Page } from '../page.ts';
import { visible } from '../visible.ts';
import { pad, truncate, widthOf } from '../width.ts';
import { fitted } from './page.ts';
import { intervalBar } from './plots.ts';

/** A longer name than this is cut on a page of 80 columns. */
const LONG = 24;

/** As many as fit, the last ones on a narrow page. */
const CHOICES: readonly (readonly GroupMeasure[])[] = [
  GROUP_MEASURES,
  ['fertility', 'fledge', 'overall'],
  ['overall'],
];

/** Groups beside each other: each rate as its counts and its share. */
export function groupTable(
  { title, nameless = 'not written down' }: { title: string; nameless?: string },
  blocks: readonly Block[],
  page: Page,
): string[] {
  const filled = blocks.filter(({ clutches, rates }) => clutches.length > 0 || hasGroupRate(rates));
  if (filled.length === 0) return [];
  const names = filled.map(({ name }) => (name === null ? nameless : visible(name)));
  // Names that would be cut stand on lines of their own.
  const long = names.some((name) => widthOf(name) > LONG);
  const tables = CHOICES.map((shown) => ({
    rows: [
      [title, 'clutches', ...shown.map((measure) => GROUP_HEADS[measure])],
      ...filled.map(({ clutches, rates }, i) => [
        long ? '' : (names[i] ?? ''),
        String(clutches.length),
        ...shown.map((measure) => cell(rates[measure])),
      ]),
    ],
    right: Array.from({ length: shown.length + 1 }, (_, i) => i + 1),
  }));
  const [head = '', ...rows] = fitted(tables, page);
  return [head, ...rows.flatMap((row, i) => (long ? [...indented(names[i] ?? '', page), row] : [row]))];
}

function cell({ k, n, rate, open }: Rate): string {
  if (rate === null) return open > 0 ? 'open' : '–';
  return `${k}/${n} ${pad(percent(rate), 5)}`;
}

/** What stands under a table of groups, so that its short heads are not misread. */
export function tableNote(page: Page): string[] {
  return aside(GROUP_NOTE, page);
}

const COUNT = 11;
const RATE = 7;
const RANGE = 9;

/** Pairs in the order of what their clutches make one expect of the next. */
export function rankingLines({ rows }: Ranking, page: Page): string[] {
  const name = Math.min(22, Math.max(6, max(rows, (row) => widthOf(visible(row.name ?? ''))) ?? 0) + 2);
  const picture = Math.min(31, page.width - 2 - name - COUNT - RATE - RANGE - 1);
  return rows.map(({ name: own, k, n, mean, low, high }) => {
    const head = `  ${pad(truncate(visible(own ?? ''), name - 2), name)}${pad(`${k} of ${n}`, COUNT)}`;
    const range = pad(percentRange(low, high), RANGE);
    return `${head}${pad(percent(mean), RATE)}${range} ${picture > 9 ? intervalBar({ low, rate: mean, high }, picture) : ''}`.trimEnd();
  });
}
