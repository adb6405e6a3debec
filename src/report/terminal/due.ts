import type { AgendaItem } from '../../rules/agenda/item.ts';
import type { Morning } from '../morning.ts';
import { longDate, relativeDay, weekdayDate } from './dates.ts';
import { fold, type Row } from './due/fold.ts';
import { type Grouping, groupsBy } from './due/groups.ts';
import { gutterWords, type Page, rowLines, taskColumn } from './due/lines.ts';
import { warningLines } from './due/warnings.ts';
import { subject, unsaid } from './due/where.ts';
import { countLevel, findingsSummary } from './findings.ts';
import { styles } from './style.ts';
import { visibleData } from './visible.ts';
import { widthOf, wrap } from './width.ts';
import { count } from './words.ts';

interface DueOptions {
  width: number;
  color: boolean;
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
  const page: Page = {
    day: shown.day,
    width: Math.min(Math.max(width, NARROWEST), WIDEST),
    styles: styles(color),
    gutter: Math.max(USUAL_GUTTER, ...rows.map(([item]) => widthOf(gutterWords(item, shown.day)))),
  };
  const blocks = [
    heading(shown, page),
    findingsSummary(findings, page.width, page.styles),
    warningLines(shown.warnings, page),
    quiet(shown, countLevel(findings, 'error') > 0, page),
    ...(by === 'urgency' ? urgency(rows, page) : walk(shown.items, by, page)),
    hints(countLevel(findings, 'hint'), page),
  ];
  return blocks
    .filter((lines) => lines.length > 0)
    .map((lines) => `${lines.join('\n')}\n`)
    .join('\n');
}

function heading({ day, today, room, days, items }: Morning, { styles, width }: Page): string[] {
  const title = [longDate(day), room].filter((part) => part !== null).join(' · ');
  const number = (state: AgendaItem['state']) => items.filter((item) => item.state === state).length;
  const counts = [
    number('late') > 0 ? `${number('late')} late` : null,
    number('now') > 0 ? `${number('now')} for today` : null,
    number('coming') > 0 ? `${number('coming')} to come in the next ${count(days, 'day')}` : null,
  ].filter((part) => part !== null);
  return [
    ...wrap(title, width).map(styles.heading),
    ...(day === today ? [] : wrap(`as it stands on that day; today is ${weekdayDate(today, day)}`, width)),
    ...(counts.length === 0 ? [] : wrap(counts.join(' · '), width)),
  ];
}

function urgency(rows: Row[], page: Page): string[][] {
  const column = taskColumn(rows, page);
  return SECTIONS.map(({ state, title }) => {
    const ofState = rows.filter(([item]) => item.state === state);
    if (ofState.length === 0) return [];
    const lines = ofState.flatMap((row, index) => {
      const above = ofState[index - 1]?.[0];
      const repeats = above !== undefined && state === 'coming' && above.from === row[0].from;
      return rowLines(row, { said: unsaid, column, repeats }, page);
    });
    return [page.styles[state](title), ...lines];
  });
}

function walk(items: AgendaItem[], by: Exclude<Grouping, 'urgency'>, page: Page): string[][] {
  const column = taskColumn(fold(items), page);
  return groupsBy(by, items).map(({ title, said, items: ofGroup }) => [
    ...wrap(title, page.width, { hanging: 2 }).map(page.styles.heading),
    ...fold(ofGroup).flatMap((row) => rowLines(row, { said, column, repeats: false }, page)),
  ]);
}

/** A kind word when there is nothing to do now, and when the next work comes. */
function quiet(morning: Morning, broken: boolean, { width }: Page): string[] {
  const { items, warnings } = morning;
  if (items.some(({ state }) => state !== 'coming')) return [];
  const nothing = broken
    ? 'Nothing is due as far as the journals can be read.'
    : `${warnings.length > 0 ? 'Beyond that' : 'A quiet morning'}: nothing is late and nothing is due today.`;
  return wrap(items.length > 0 ? nothing : `${nothing} ${afterwards(morning)}`, width);
}

/** What an agenda without a line says of the time after it. */
function afterwards({ day, days, next }: Morning): string {
  if (next === null) return 'Nothing is foreseen either. Food, water and a look at every bird, all the same.';
  const when = `${weekdayDate(next.from, day)}, ${relativeDay(next.from, day)}`;
  return `Nor is anything in the next ${count(days, 'day')}. After that: ${next.say}, ${subject(next)} (${when}).`;
}

function hints(number: number, { width, styles }: Page): string[] {
  if (number === 0) return [];
  const text = `${count(number, 'hint')} on how something is written: nestlog check shows ${number === 1 ? 'it' : 'them'}`;
  return wrap(text, width).map(styles.muted);
}
