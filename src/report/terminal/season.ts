import type { SeasonBook } from '../../rules/season/season.ts';
import { emptyWords, FEW_CLUTCHES, HOW, headOf, rankingNote, TOO_LITTLE } from '../season.ts';
import { aside, type Page, type Screen, section, textOf } from './page.ts';
import { besideLines, comparisonLines } from './season/comparison.ts';
import { funnelLines } from './season/funnel.ts';
import { groupTable, rankingLines, tableNote } from './season/groups.ts';
import { lossLines } from './season/losses.ts';
import { openingLines } from './season/opening.ts';
import { rateLines } from './season/rates.ts';
import { stageLines } from './season/stages.ts';
import { survivalLines } from './season/survival.ts';
import { styles } from './style.ts';
import { wrap } from './width.ts';

/** The season's page; a sentence instead where there is nothing to say. */
export function seasonText(book: SeasonBook, { width, color }: Screen): string {
  const look = styles(color);
  const page: Page = { width, look };
  const { totals, measures } = book;
  const { title: name, standing, counted } = headOf(book);
  const title = wrap(`${name} · ${standing}`, width).map(look.heading);
  if (totals.clutches.length === 0) return `${[...title, ...wrap(emptyWords(book), width)].join('\n')}\n`;
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
    aside(`${HOW} What each rate counts: the manual, “How nestlog counts”.`, page),
  ];
  return textOf(blocks);
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
          ...aside(FEW_CLUTCHES, page),
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
  if (ranking === null) return aside(TOO_LITTLE, page);
  const title = measures.find(({ name }) => name === ranking.measure)?.title ?? '';
  return [...rankingLines(ranking, page), ...aside(rankingNote(title), page)];
}

function earlier({ before, measures, season }: SeasonBook, page: Page): string[] {
  if (before === null) return [];
  const lines = [
    ...besideLines(before.comparison, measures, page),
    ...comparisonLines(before.comparison, { measures, others: 'the seasons before' }, page),
  ];
  return section(`${season} BESIDE ${before.season}`, lines, page);
}
