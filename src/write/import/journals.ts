import { type Day, formatDay } from '../../days.ts';
import { grouped } from '../../grouped.ts';
import { type ObservationKey, observations } from '../../journal/observations/index.ts';
import { lineOf, scalar } from '../../journal/print.ts';
import { schemaLine } from '../../journal/schema-files.ts';
import { journalPath, printable } from '../names.ts';
import { pinned } from '../pin.ts';
import type { DraftEntry } from './entry.ts';
import { type HeaderKey, headerKeys } from './mapping.ts';
import { type ImportProblem, problemIn } from './problem.ts';

/** What one row says: of which pair, and when what was seen there. */
export interface DraftRow {
  row: number;
  header: ReadonlyMap<HeaderKey, string>;
  entries: DraftEntry[];
}

/** A journal that is to be written. */
export interface NewJournal {
  pair: string;
  /** Relative to the room, with `/`. */
  path: string;
  text: string;
  entries: number;
  /** Entries whose date was counted from another one. */
  assumed: number;
  /** The row that each line of the text comes from, by its 1-based number. */
  rows: ReadonlyMap<number, number>;
}

interface Layout {
  /** The table's name, and the day of the import. */
  table: string;
  today: Day;
  /** Folder below `pairs/`, or empty. */
  into: string;
  /** Whether each row is a clutch of its own. */
  numbered: boolean;
}

type Located = DraftEntry & { row: number };

/** One journal a pair, its entries in the order in which they happened. */
export function journalsOf(
  rows: readonly DraftRow[],
  layout: Layout,
  problems: ImportProblem[],
): NewJournal[] {
  const pairs = grouped(rows, ({ header }) => header.get('pair') as string);
  const journals: NewJournal[] = [];
  const files = new Map<string, string>();
  const names = new Map<string, string>();
  for (const [pair, ofPair] of pairs) {
    const path = journalPath(pair, layout.into);
    const [at, plain] = [{ row: ofPair[0].row }, pair.replace(/\s+/g, '').toLowerCase()];
    const [alike, other] = [names.get(plain), files.get(path.toLowerCase())];
    if (alike !== undefined) {
      const text = `\`${pair}\` and \`${alike}\` differ only in capitals or blanks`;
      problems.push(problemIn(layout.table, at, text, `write \`${alike}\` if it is the same pair`));
    } else if (other !== undefined) {
      const text = `the pairs \`${other}\` and \`${pair}\` would share the file ${path}`;
      problems.push(problemIn(layout.table, at, text, 'give one of them another id'));
    }
    names.set(plain, pair);
    files.set(path.toLowerCase(), pair);
    journals.push(journalOf(pair, path, ofPair, layout, problems));
  }
  return journals;
}

function journalOf(
  pair: string,
  path: string,
  rows: DraftRow[],
  layout: Layout,
  problems: ImportProblem[],
): NewJournal {
  const header = headerOf(pair, rows, layout.table, problems);
  if (layout.numbered) for (const row of rows) problems.push(...twoClutches(row, layout.table));
  const entries = (layout.numbered ? inClutches(rows) : rows)
    .flatMap(({ row, entries: ofRow }) => ofRow.map((entry) => ({ ...entry, row })))
    .sort((a, b) => a.date - b.date || orderOf(a) - orderOf(b));
  const lines = [
    schemaLine('pair', path),
    `# From ${printable(layout.table)}, imported on ${formatDay(layout.today)}.`,
    ...header,
    'log:',
  ];
  const from = new Map<number, number>();
  for (const entry of entries) {
    lines.push(`  ${lineOf(entry.fields)}`);
    from.set(lines.length, entry.row);
  }
  const assumed = entries.filter((entry) => entry.assumed).length;
  return { pair, path, text: `${lines.join('\n')}\n`, entries: entries.length, assumed, rows: from };
}

/** Every row of a pair has to say the same of it. */
function headerOf(
  pair: string,
  rows: readonly DraftRow[],
  file: string,
  problems: ImportProblem[],
): string[] {
  const lines: string[] = [];
  for (const key of headerKeys) {
    const said = rows.flatMap(({ row, header }) => {
      const value = header.get(key);
      return value === undefined ? [] : [{ row, value }];
    });
    const [first] = said;
    if (first === undefined) continue;
    lines.push(`${key}: ${scalar(first.value)}`);
    const other = said.find(({ value }) => value !== first.value);
    if (other === undefined) continue;
    const text = `${key} of ${pair} is \`${other.value}\` here and \`${first.value}\` in row ${first.row}`;
    const hint = 'one journal a pair: give the new pair an id of its own';
    problems.push(problemIn(file, { row: other.row }, text, hint));
  }
  return lines;
}

/** Eggs that were laid after young came out of the same row's eggs are of another clutch, or a date is a slip. */
function twoClutches({ row, entries }: DraftRow, file: string): ImportProblem[] {
  const own = entries.filter((entry) => !says(entry, 'clutch'));
  const laid = own.filter((entry) => says(entry, 'laid')).map(({ date }) => date);
  for (const key of ['hatched', 'fledged', 'independent'] satisfies ObservationKey[]) {
    const out = Math.min(...own.filter((entry) => says(entry, key)).map(({ date }) => date));
    const later = laid.find((date) => date > out);
    if (later === undefined) continue;
    const text = `\`laid\` on ${formatDay(later)} comes after \`${key}\` on ${formatDay(out)}, but a row is one clutch`;
    const hint = 'put each clutch into a row of its own, or correct the date';
    return [problemIn(file, { row }, text, hint)];
  }
  return [];
}

/** Numbers the clutches of a pair by their first dates, on all entries from the first egg on. */
function inClutches(rows: readonly DraftRow[]): DraftRow[] {
  const first = ({ entries }: DraftRow) => Math.min(...entries.map(({ date }) => date));
  return [...rows]
    .sort((a, b) => first(a) - first(b))
    .map((row, index) => {
      const laid = Math.min(...row.entries.filter((entry) => says(entry, 'laid')).map(({ date }) => date));
      const entries = row.entries.map((entry) =>
        entry.date < laid || says(entry, 'clutch')
          ? entry
          : { ...entry, fields: pinned(entry.fields, index + 1) },
      );
      return { ...row, entries };
    });
}

function says({ fields }: DraftEntry, name: string): boolean {
  return fields.pairs.some(([key]) => key.text === name);
}

/** The place in its day of what an entry tells first. */
function orderOf({ fields }: Located): number {
  const orders = fields.pairs.flatMap(([{ text }]) =>
    Object.hasOwn(observations, text) ? [observations[text as ObservationKey].order] : [],
  );
  return Math.min(...orders);
}
