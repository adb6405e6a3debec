import type { Ahead } from '../../../rules/ahead/ahead.ts';
import type { Young } from '../../../rules/ahead/weeks.ts';
import { speciesName } from '../../../words.ts';
import { columns } from '../columns.ts';
import { dateSpan } from '../dates.ts';
import { type DatedPage, estimateText, NOBODY } from './page.ts';

const HEADS = ['hatch', 'leave the nest', 'feed themselves'];

const figures = ({ hatching, fledging, independent }: Young) =>
  [hatching, fledging, independent].map(estimateText);

/** Week by week, and all weeks together; the first has no beginning where something should have come before it. */
export function weekLines(
  { weeks, before, total, day }: Pick<Ahead, 'weeks' | 'before' | 'total' | 'day'>,
  page: DatedPage,
): string[] {
  const isLate = figures(before).some((figure) => figure !== NOBODY);
  const rows = weeks.map((week, i) => [
    `${week.week}`,
    isLate && i === 0 ? `to ${dateSpan(week.to, week.to, day)}` : dateSpan(week.from, week.to, day),
    ...figures(week),
  ]);
  return table(
    'Young expected',
    [['week', '', ...HEADS], ...rows, ['', 'together', ...figures(total)]],
    page,
    1,
  );
}

/** The same weeks, species by species. */
export function speciesLines({ species }: Pick<Ahead, 'species'>, page: DatedPage): string[] {
  const rows = species.map((one) => [speciesName(one.species), ...figures(one)]);
  return table('By species', [['', ...HEADS], ...rows], page, 0);
}

function table(title: string, rows: string[][], { width, look }: DatedPage, cut: number): string[] {
  const [head = '', ...lines] = columns(rows, { width, indent: 2, cut });
  return [look.heading(title), look.muted(head), ...lines];
}
