import { max } from 'd3-array';
import type { AgendaItem } from '../../rules/agenda/item.ts';
import type { Morning } from '../morning.ts';
import { fold, type Row } from './due/fold.ts';
import { type Grouping, groupsBy } from './due/groups.ts';
import { type DuePage, gutterWords, rowLines, taskColumn } from './due/lines.ts';
import { hintsText, openingOf, quietText } from './due/opening.ts';
import { warningLines } from './due/warnings.ts';
import { unsaid } from './due/where.ts';
import { countLevel, findingsSummary } from './findings.ts';
import { pageWidth, type Screen, textOf } from './page.ts';
import { styles } from './style.ts';
import { visibleData } from './visible.ts';
import { widthOf, wrap } from './width.ts';

interface DueOptions extends Screen {
  by: Grouping;
}

/** As wide as `Wed 20 May`, so that the page looks the same from one morning to the next. */
const USUAL_GUTTER = 10;
/** What is laid out for less gets longer lines; more is not used, as long lines are hard to read. */
const NARROWEST = 40;
const WIDEST = 120;

const SECTIONS = [
  { state: 'late', title: 'LATE' },
  { state: 'now', title: 'TODAY' },
  { state: 'coming', title: 'COMING' },
] as const;

/**
 * The morning as text: what is broken in the journals, warnings, then what is late, what is for today and what is
 * coming. `by` housing or pair orders the work for a walk through the room instead.
 */
export function dueText(morning: Morning, { width, color, by }: DueOptions): string {
  const { findings } = morning;
  const shown = visibleData({ ...morning, findings: [] });
  const rows = fold(shown.items);
  const page: DuePage = {
    day: shown.day,
    width: pageWidth(width, NARROWEST, WIDEST),
    look: styles(color),
    gutter: Math.max(USUAL_GUTTER, max(rows, ([item]) => widthOf(gutterWords(item, shown.day))) ?? 0),
  };
  const blocks = [
    heading(shown, page),
    findingsSummary(findings, page.width, page.look),
    warningLines(shown.warnings, page),
    quietText(shown, countLevel(findings, 'error') > 0).flatMap((text) => wrap(text, page.width)),
    ...(by === 'urgency' ? urgency(rows, page) : walk(shown.items, by, page)),
    hints(countLevel(findings, 'hint'), page),
  ];
  return textOf(blocks);
}

function heading(morning: Morning, { look, width }: DuePage): string[] {
  const { title, standing, counts } = openingOf(morning);
  return [
    ...wrap(title, width).map(look.heading),
    ...(standing === null ? [] : wrap(standing, width)),
    ...(counts === '' ? [] : wrap(counts, width)),
  ];
}

function urgency(rows: Row[], page: DuePage): string[][] {
  const column = taskColumn(rows, page);
  return SECTIONS.map(({ state, title }) => {
    const ofState = rows.filter(([item]) => item.state === state);
    if (ofState.length === 0) return [];
    const lines = ofState.flatMap((row, index) => {
      const above = ofState[index - 1]?.[0];
      const repeats = above !== undefined && state === 'coming' && above.from === row[0].from;
      return rowLines(row, { said: unsaid, column, repeats }, page);
    });
    return [page.look[state](title), ...lines];
  });
}

function walk(items: AgendaItem[], by: Exclude<Grouping, 'urgency'>, page: DuePage): string[][] {
  const column = taskColumn(fold(items), page);
  return groupsBy(by, items).map(({ title, said, items: ofGroup }) => [
    ...wrap(title, page.width, { hanging: 2 }).map(page.look.heading),
    ...fold(ofGroup).flatMap((row) => rowLines(row, { said, column, repeats: false }, page)),
  ]);
}

function hints(number: number, { width, look }: DuePage): string[] {
  return number === 0 ? [] : wrap(hintsText(number), width).map(look.muted);
}
