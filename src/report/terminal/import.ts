import { sumBy } from '../../statistics/sums.ts';
import { count } from '../../words.ts';
import type { ImportOutcome } from '../import.ts';
import { indented, type Page, type Screen } from './page.ts';
import { styles } from './style.ts';
import { visible } from './visible.ts';
import { truncate, widthOf, wrap } from './width.ts';

interface ImportOptions extends Screen {
  /** How many problems are shown. */
  most: number;
}

const INDENT = '  ';
/** Lines of the first journal that are shown as a sample. */
const SAMPLE = 14;

/** What an import did or would do; where it cannot be done, every reason by its row. */
export function importText(outcome: ImportOutcome, { width, color, most }: ImportOptions): string {
  const page = { width, look: styles(color) };
  const lines =
    outcome.problems.length > 0
      ? problemLines(outcome, most, page)
      : [...summaryLines(outcome, page), ...sampleLines(outcome, page), '', ...lastLines(outcome, page)];
  return `${lines.join('\n')}\n`;
}

function problemLines({ problems }: ImportOutcome, most: number, page: Page): string[] {
  const { width, look } = page;
  const lines = problems.slice(0, most).flatMap((problem) => {
    const place = placeOf(problem, width);
    const head = `${place} error: `;
    const [first, ...rest] = wrap(visible(problem.text), width, { hanging: 2, taken: widthOf(head) });
    const fix = problem.hint === null ? [] : indented(`fix: ${visible(problem.hint)}`, page, { hanging: 5 });
    return [`${look.place(place)} ${look.error('error:')} ${first}`, ...rest, ...fix, ''];
  });
  const more = problems.length - most;
  if (more > 0) lines.push(`and ${more} more; --all shows them`, '');
  const said = `${count(problems.length, 'problem')}, so nothing is written.`;
  return [...lines, ...wrap(said, width).map(look.heading)];
}

/** `old.csv row 12, Hatched on:`, with names that are too long for the line cut short. */
function placeOf({ file, row, line, column }: ImportOutcome['problems'][number], width: number): string {
  const short = (name: string) => truncate(visible(name), Math.max(8, Math.floor(width / 3)));
  const where = row !== null ? ` row ${row}` : line !== null ? ` line ${line}` : '';
  return `${short(file)}${where}${column === null ? '' : `, ${short(column)}`}:`;
}

function summaryLines(outcome: ImportOutcome, page: Page): string[] {
  const { table, rows, skipped, journals, dates, unread, zeros, hints } = outcome;
  const entries = sumBy(journals, (journal) => journal.entries);
  const assumed = sumBy(journals, (journal) => journal.assumed);
  const head = `${table}: ${count(rows, 'row')}, ${count(journals.length, 'journal')}, ${count(entries, 'entry', 'entries')}`;
  const left = [...zeros].map(([key, times]) => `${key} in ${count(times, 'row')}`).join(', ');
  const facts = [
    skipped > 0 ? `left out as the mapping says: ${count(skipped, 'row')}` : null,
    dates.order === null ? null : `dates are read ${dates.order} (${dates.because})`,
    assumed > 0 ? `dates counted from other dates, which their notes say: ${assumed}` : null,
    left === '' ? null : `not written, as the table says 0: ${left}`,
    unread.length > 0 ? `columns that are not read: ${unread.join(', ')}` : null,
    ...hints.map(({ row, text, times }) => {
      const where =
        row === null ? '' : times > 1 ? ` (${times} times, first in row ${row})` : ` (row ${row})`;
      return `hint: ${text}${where}`;
    }),
  ];
  return [
    ...wrap(visible(head), page.width).map(page.look.heading),
    ...facts.flatMap((fact) => (fact === null ? [] : indented(visible(fact), page, { hanging: 2 }))),
  ];
}

function sampleLines({ journals: [first] }: ImportOutcome, { look }: Page): string[] {
  if (first === undefined) return [];
  const lines = first.text.trimEnd().split('\n');
  return [
    '',
    look.place(`${visible(first.path)}:`),
    ...lines.slice(0, SAMPLE).map((line) => INDENT + visible(line)),
    ...(lines.length > SAMPLE ? [`${INDENT}and ${count(lines.length - SAMPLE, 'line')} more`] : []),
  ];
}

function lastLines({ written }: ImportOutcome, { width, look }: Page): string[] {
  const said = written
    ? 'All of it is written. `nestlog check` reads it once more.'
    : 'Nothing is written yet: without --dry-run it will be.';
  return wrap(said, width).map(look.heading);
}
