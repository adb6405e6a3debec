import { kindOf } from '../../findings/codes.ts';
import type { Finding } from '../../findings/finding.ts';
import type { PairJournal } from '../../journal/entry.ts';
import type { Clock } from '../../journal/future.ts';
import { type RoomRecord, readRoom, type SourceFile } from '../../journal/record.ts';
import type { Room } from '../../room/fold.ts';
import type { NewJournal } from './journals.ts';
import { type ImportProblem, problemIn } from './problem.ts';
import type { Table } from './table.ts';

/** Understands the room as it will be, with every finding that `check` has of it. */
export type Understand = (record: RoomRecord, clock: Clock) => Pick<Room, 'findings'>;

/** Something to know about what was imported; it does not stand in the way. */
export interface ImportHint {
  /** The first row that it is about. */
  row: number | null;
  text: string;
  /** How many rows say so. */
  times: number;
}

/**
 * Reads the room as it will be, and gives what is wrong in the new journals by the rows that they come from: an egg
 * that hatches before it is laid, more young than eggs, a day that has not come.
 */
export function verify(
  table: Table,
  { existing, clock, understand }: { existing: readonly SourceFile[]; clock: Clock; understand: Understand },
  journals: readonly NewJournal[],
  problems: ImportProblem[],
): ImportHint[] {
  const byPath = new Map(journals.map((journal) => [journal.path, journal]));
  const files = [...existing, ...journals.map(({ path, text }) => ({ path, text }))];
  const record = readRoom(files, clock);
  const known = record.pairs.filter(({ file }) => !byPath.has(file));
  for (const journal of journals) problems.push(...overwritten(table.file, journal, existing, known));
  if (problems.length > 0) return [];
  const { findings } = understand(record, clock);
  const hints = new Map<string, ImportHint>();
  for (const finding of findings) {
    const journal = byPath.get(finding.at.file);
    if (journal === undefined) continue;
    const row = journal.rows.get(finding.at.line) ?? firstRow(journal);
    const { level, text, hint } = kindOf(finding);
    if (level === 'error') problems.push(problemOf(table, row, finding, journal));
    else addHint(hints, `${text(finding.args)}${suggestion(hint(finding.args))}`, row);
  }
  return [...hints.values()];
}

/** An import begins journals; it never changes one. */
function overwritten(
  file: string,
  journal: NewJournal,
  existing: readonly SourceFile[],
  known: readonly PairJournal[],
): ImportProblem[] {
  const { pair, path } = journal;
  const there =
    known.find((one) => one.pair.text === pair)?.file ??
    existing.find((one) => one.path.toLowerCase() === path.toLowerCase())?.path;
  if (there === undefined) return [];
  const text = `${pair} has a journal already, ${there}; it is never overwritten`;
  const hint = 'take the pair out of the table, or give it another id';
  return [problemIn(file, { row: firstRow(journal) }, text, hint)];
}

function problemOf(table: Table, row: number | null, finding: Finding, { pair }: NewJournal): ImportProblem {
  const { text, hint } = kindOf(finding);
  const column = columnOf(table, row, finding.args);
  return problemIn(table.file, { row, column }, `${pair}: ${text(finding.args)}`, hint(finding.args));
}

/** The column with the cell that a finding speaks of, where only one can be it. */
function columnOf(
  { headings, rows }: Table,
  row: number | null,
  { text, who }: Finding['args'],
): string | null {
  const cells = rows.find(({ number }) => number === row)?.cells ?? [];
  const [first, ...others] = cells.flatMap((cell, index) =>
    cell !== '' && (cell === text || cell === who) ? [headings[index] ?? null] : [],
  );
  return others.length === 0 ? (first ?? null) : null;
}

/** The same sentence about several rows is said once. */
function addHint(hints: Map<string, ImportHint>, text: string, row: number | null): void {
  const known = hints.get(text);
  if (known === undefined) hints.set(text, { row, text, times: 1 });
  else known.times++;
}

function suggestion(hint: string | null): string {
  return hint === null ? '' : `: ${hint}`;
}

function firstRow({ rows }: NewJournal): number | null {
  return [...rows.values()][0] ?? null;
}
