import type { Day } from '../../days.ts';
import type { Finding } from '../../findings/finding.ts';
import type { AgendaItem, WarningLine } from '../../rules/agenda/item.ts';
import { count } from '../../words.ts';
import { dateSpan, weekdayDate } from './dates.ts';
import type { DuePage } from './due/lines.ts';
import { warningLines } from './due/warnings.ts';
import { subject } from './due/where.ts';
import { findingsText } from './findings.ts';
import type { Screen } from './page.ts';
import { type Styles, styles } from './style.ts';
import { visible, visibleData } from './visible.ts';
import { pad, wrap } from './width.ts';

/** What is told of an entry: whether it was written, what it changes, and what speaks against it. */
export interface Recorded {
  day: Day;
  what: 'written' | 'planned' | 'refused';
  plan: { path: string; line: number; lines: readonly string[] };
  changes: {
    warnings: readonly WarningLine[];
    gone: readonly AgendaItem[];
    begun: readonly AgendaItem[];
    moved: readonly { from: AgendaItem; to: AgendaItem }[];
  };
  verdict: { unreadable: readonly Finding[]; errors: readonly Finding[]; hints: readonly Finding[] };
  /** The text of each file with the entry, by the name that findings use. */
  sources: Pick<ReadonlyMap<string, string>, 'get'>;
  /** How to type what stands in a journal, or null where a text is none of it. */
  typed: (text: string) => string | null;
}

/** Lines of the agenda that are shown of each kind; more than that is read in the morning. */
const MOST = 6;
const GUTTER = 7;

/** An entry and what it changed, or why it was not written, in a few lines. */
export function recordText(recorded: Recorded, { width, color }: Screen): string {
  const { what, verdict } = recorded;
  const look = styles(color);
  const findings = [...verdict.unreadable, ...verdict.errors, ...verdict.hints];
  const layout = { sources: recorded.sources, width, styles: look, perFile: 10 };
  // What stands in the journal is mended there, what does not is typed anew.
  const told = findingsText(findings, what === 'written' ? layout : { ...layout, typed: recorded.typed });
  const blocks =
    what === 'refused'
      ? [refusal(recorded, width), told, wayOut(recorded, width)]
      : [written(recorded, look), warned(recorded, width, look), changed(recorded, width, look), told];
  return blocks.filter((block) => block !== '').join('\n');
}

/** The lines that an undone entry had. */
export function undoText({
  path,
  inserted,
  done,
}: {
  path: string;
  inserted: string;
  done: boolean;
}): string {
  const head = done
    ? `Taken back; ${visible(path)} is as it was before:`
    : `Would be taken back from ${visible(path)}:`;
  return block([head, ...unindented(inserted.split(/\r\n|\n|\r/).filter((line) => line.trim() !== ''))]);
}

function written({ what, plan }: Recorded, { heading }: Styles): string {
  const place = `${visible(plan.path)}, line ${plan.line}:`;
  const head = what === 'written' ? `Written to ${place}` : `Would be written to ${place}`;
  return block([heading(head), ...unindented(plan.lines)]);
}

/** As they stand in the file, but for the indent that they share. */
function unindented(lines: readonly string[]): string[] {
  const outer = Math.min(...lines.map((line) => line.search(/\S|$/)));
  return lines.map((line) => `  ${visible(line.slice(outer))}`);
}

/** What the entry gives reason to worry about comes before the tasks. */
function warned({ changes, day }: Recorded, width: number, look: Styles): string {
  if (changes.warnings.length === 0) return '';
  const page: DuePage = { day, width, look, gutter: GUTTER };
  return block(warningLines(visibleData(changes.warnings), page));
}

function changed({ changes, day }: Recorded, width: number, look: Styles): string {
  const { gone, begun, moved } = visibleData(changes);
  const says = [
    ...some('gone', gone, ({ say, ...item }) => `${say}, ${subject({ say, ...item })}`, look.muted),
    ...some('new', begun, (item) => `${item.say}, ${subject(item)}: ${days(item, day)}`, look.now),
    ...some(
      'moved',
      moved,
      ({ from, to }) => `${to.say}, ${subject(to)}: ${days(to, day)}, was ${days(from, day)}`,
      look.coming,
    ),
  ];
  if (says.length === 0) return changes.warnings.length > 0 ? '' : block(['Nothing changes in the agenda.']);
  const lines = says.flatMap(([word, text, style]) => {
    const [first = '', ...rest] = wrap(text, width - GUTTER - 2, { hanging: 2 });
    const blank = ' '.repeat(GUTTER + 2);
    return [`  ${style(word)}${pad('', GUTTER - word.length)}${first}`, ...rest.map((line) => blank + line)];
  });
  return block(['In the agenda:', ...lines]);
}

type Row = [word: string, text: string, style: (text: string) => string];

function some<T>(
  word: string,
  items: readonly T[],
  say: (item: T) => string,
  style: (text: string) => string,
): Row[] {
  const rows = items.slice(0, MOST).map((item): Row => [word, say(item), style]);
  const more = items.length - rows.length;
  return more > 0 ? [...rows, ['', `and ${more} more`, style]] : rows;
}

function days({ from, to, likely }: AgendaItem, day: Day): string {
  const span = from === to ? weekdayDate(from, day) : dateSpan(from, to, day);
  return likely === null || from === to ? span : `${span}, likely ${weekdayDate(likely, day)}`;
}

function refusal({ verdict, plan }: Recorded, width: number): string {
  const why =
    verdict.unreadable.length > 0
      ? 'the entry cannot be read.'
      : `${count(verdict.errors.length, 'thing')} in the record ${verdict.errors.length === 1 ? 'speaks' : 'speak'} against it.`;
  return block(wrap(`nestlog: nothing was written to ${visible(plan.path)}: ${why}`, width));
}

function wayOut({ verdict }: Recorded, width: number): string {
  if (verdict.unreadable.length > 0) return '';
  return block(
    wrap('If it is true all the same, --anyway writes it; `nestlog check` will go on to say so.', width),
  );
}

function block(lines: readonly string[]): string {
  return `${lines.join('\n')}\n`;
}
