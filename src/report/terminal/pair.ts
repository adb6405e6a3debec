import type { Day } from '../../days.ts';
import type { ClutchStory, PairStory } from '../../rules/season/story.ts';
import { guestsWords, inCareWords } from '../season.ts';
import { columns } from './columns.ts';
import { percent, percentRange } from './figures.ts';
import { aside, indented, type Page, type Screen, section, textOf } from './page.ts';
import { clutchFacts, clutchHead, titleOf } from './pair/facts.ts';
import { fateLines } from './pair/fates.ts';
import { LEGEND, timelineLines } from './pair/timeline.ts';
import { fitted, without } from './season/page.ts';
import { styles } from './style.ts';
import { pad, wrap } from './width.ts';

/** A pair's years on a page: its clutches one by one, and its rates beside the room's. */
export function pairText(story: PairStory, { width, color }: Screen): string {
  const page: Page = { width, look: styles(color) };
  const { clutches } = story;
  const told =
    clutches.length === 0
      ? [indented('No clutch yet.', page)]
      : clutches.map((one) => clutchLines(one, story.day, page));
  const care = inCareWords(story.pair);
  const blocks = [
    wrap(titleOf(story), width).map(page.look.heading),
    ...told,
    care === '' ? [] : indented(care, page),
    clutches.length === 0 ? [] : aside(LEGEND, page),
    section('BESIDE THE OTHER PAIRS', rateLines(story, page), page),
  ];
  return textOf(blocks);
}

/** Dates are of the year in which the clutch was begun, which stands in its head, unless they say otherwise. */
function clutchLines(story: ClutchStory, today: Day, page: Page): string[] {
  const { clutch } = story;
  const cells = clutchFacts(story);
  const number = `CLUTCH ${clutch.number}`;
  const [first = '', ...rest] = wrap(`${number} · ${clutchHead(story)}`, page.width);
  return [
    page.look.heading(number) + page.look.muted(first.slice(number.length)),
    ...rest.map(page.look.muted),
    ...(cells.length === 0 ? [] : columns(cells, { width: page.width, indent: 2, cut: 3 })),
    ...timelineLines(story, today, page),
    ...fateLines(story, today, page.width),
  ];
}

function rateLines({ own, others, reared, measures }: PairStory, page: Page): string[] {
  const rows = measures.map(({ name, title }) => {
    const [mine, rest] = [own.rates[name], others.rates[name]];
    const range = mine.low === null || mine.high === null ? '' : percentRange(mine.low, mine.high);
    return [title, share(mine), range, share(rest), mine.open > 0 ? `${mine.open} open` : ''];
  });
  if (rows.every(([, mine]) => mine === '–'))
    return indented('Nothing of it is finished enough to be counted.', page);
  const head = ['', 'this pair', '95 %', 'all others', ''];
  const all = [head, ...rows];
  const table = fitted(
    [
      { rows: all, right: [] },
      { rows: without(all, [2]), right: [] },
    ],
    page,
  );
  const guests = guestsWords(reared);
  return [...table, ...(guests === '' ? [] : indented(guests, page))];
}

function share({ k, n, rate }: PairStory['own']['rates']['fertility']): string {
  return rate === null ? '–' : `${pad(`${k} of ${n}`, 9)} ${percent(rate)}`;
}
