import type { Block } from '../../../rules/season/block.ts';
import type { Stage } from '../../../rules/season/stages.ts';
import { STAGE_NOTE, wasWatched } from '../../season.ts';
import { number, percentRange } from '../figures.ts';
import { aside, type Page } from '../page.ts';
import { fitted, without } from './page.ts';

export const STAGE_WORDS: Record<Stage['stage'], string> = {
  laying: 'laying',
  sitting: 'sitting',
  nest: 'in the nest',
  fledged: 'fledged, fed',
};

/** How whole clutches came through each stage. */
export function stageLines({ stages }: Pick<Block, 'stages'>, page: Page): string[] {
  const watched = stages.filter(wasWatched);
  if (watched.length === 0) return [];
  const rows = watched.map(({ stage, exposure, losses, daily, period, low, high, days }) => [
    STAGE_WORDS[stage],
    number(exposure),
    String(losses),
    daily === null ? '–' : `${(100 * daily).toFixed(1)} %`,
    period === null || days === null ? '–' : `${Math.round(100 * period)} % of ${number(days)} d`,
    low === null || high === null ? '–' : percentRange(low, high),
  ]);
  const head = ['stage', 'days watched', 'lost', 'a day', 'the whole stage', '95 %'];
  const all = [head, ...rows];
  const table = fitted(
    [
      { rows: all, right: [1, 2, 3] },
      { rows: without(all, [3]), right: [1, 2] },
      { rows: without(all, [1, 3]), right: [1] },
    ],
    page,
  );
  return [...table, ...aside(STAGE_NOTE, page)];
}
