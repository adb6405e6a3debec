import type { SeasonBook } from '../../rules/season/season.ts';
import { longDate } from './dates.ts';
import { besideLines, comparisonLines } from './season/comparison.ts';
import { funnelLines } from './season/funnel.ts';
import { groupTable, rankingLines, tableNote } from './season/groups.ts';
import { lossLines } from './season/losses.ts';
import { openingLines } from './season/opening.ts';
import { aside, type Page, section } from './season/page.ts';
import { rateLines } from './season/rates.ts';
import { stageLines } from './season/stages.ts';
import { survivalLines } from './season/survival.ts';
import { styles } from './style.ts';
import { visible } from './visible.ts';
import { wrap } from './width.ts';
import { count } from './words.ts';

interface Options {
  width: number;
  color: boolean;
}

/** The season's page; a sentence instead where there is nothing to say. */
export function seasonText(book: SeasonBook, { width, color }: Options): string {
  const look = styles(color);
  const page: Page = { width, look };
  const { totals, measures } = book;
  const title = wrap(titleOf(book), width).map(look.heading);
  if (totals.clutches.length === 0) return `${[...title, ...emptyLines(book, width)].join('\n')}\n`;
  const kinds = book.bySpecies.length > 1 ? ` of ${count(book.bySpecies.length, 'species', 'species')}` : '';
  const counted = `${count(totals.clutches.length, 'clutch', 'clutches')} of ${count(totals.pairs, 'pair')}${kinds}`;
  const blocks = [
    [...title, ...wrap(counted, width).map(look.muted), '', ...openingLines(book, width)],
    section('FROM EGG TO INDEPENDENT', funnelLines(totals, page), page),
    section('RATES', rateLines(totals, measures, page), page),
    section('CHICKS BY AGE', survivalLines(totals, page), page),
    section('LOSSES', lossLines(totals, page), page),
    section('CLUTCHES BY STAGE', stageLines(totals, page), page),
    ...groupBlocks(book, page),
    section('PAIRS IN ORDER', rankedLines(book, page), page),
    earlier(book, page),
    aside(HOW, page),
  ];
  return blocks
    .filter((lines) => lines.length > 0)
    .map((lines) => `${lines.join('\n')}\n`)
    .join('\n');
}

const HOW =
  'A clutch enters a rate once all of it is past that stage; the rest stands beside it as open. The 95 % are where the rate would lie 19 times in 20, allowing for eggs of one clutch sharing their fate. What each rate counts: the manual, “How nestlog counts”.';

function titleOf({ season, room, day }: SeasonBook): string {
  const name = season === 'all' ? 'All seasons' : `Season ${season}`;
  const where = room === null ? '' : ` · ${visible(room)}`;
  return `${name}${where} · as known on ${longDate(day)}`;
}

function emptyLines({ seasons, season }: SeasonBook, width: number): string[] {
  const others =
    seasons.length === 0
      ? 'No journal of this room has a clutch yet.'
      : `There are clutches in ${seasons.join(', ')}; \`nestlog season all\` takes them together.`;
  return wrap(`${season === 'all' ? '' : 'No clutch was begun in it. '}${others}`, width);
}

function groupBlocks({ bySpecies, bySeason, by, measures }: SeasonBook, page: Page): string[][] {
  const species = bySpecies.length > 1 && by?.name !== 'species' ? bySpecies : [];
  const seasons = by?.name === 'year' ? [] : bySeason;
  const divided =
    by === null
      ? []
      : [
          ...groupTable({ title: by.says, nameless: by.nameless }, by.blocks, page),
          ...tableNote(page),
          ...comparisonLines(by.comparison, { measures, others: 'all others' }, page),
          ...aside(
            'Groups of fewer than three clutches are not compared: what befell them befell them once.',
            page,
          ),
        ];
  return [
    section(`BY ${by?.says.toUpperCase() ?? ''}`, divided, page),
    section('SEASON BY SEASON', withNote('season', seasons, page), page),
    section('SPECIES', withNote('species', species, page), page),
  ];
}

function withNote(title: string, blocks: SeasonBook['bySpecies'], page: Page): string[] {
  return blocks.length === 0 ? [] : [...groupTable({ title }, blocks, page), ...tableNote(page)];
}

function rankedLines({ ranking, measures, byPair }: SeasonBook, page: Page): string[] {
  if (byPair.length < 2) return [];
  if (ranking === null) return aside('Too little is finished to put the pairs in order.', page);
  const title = measures.find(({ name }) => name === ranking.measure)?.title ?? '';
  return [
    ...rankingLines(ranking, page),
    ...aside(
      `${title}, counted, and what to expect of the next clutch: each pair’s own figure drawn towards the room’s as far as its few clutches call for, so that one good clutch does not lead. Where the bars overlap, the order may be luck.`,
      page,
    ),
  ];
}

function earlier({ before, measures, season }: SeasonBook, page: Page): string[] {
  if (before === null) return [];
  const lines = [
    ...besideLines(before.comparison, measures, page),
    ...comparisonLines(before.comparison, { measures, others: 'the seasons before' }, page),
  ];
  return section(`${season} BESIDE ${before.season}`, lines, page);
}
