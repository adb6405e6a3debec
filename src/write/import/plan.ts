import type { Clock } from '../../journal/future.ts';
import type { SourceFile } from '../../journal/record.ts';
import { dateForm } from './date-forms.ts';
import { decideOrder, type OrderDecision, type WrittenDate } from './date-order.ts';
import { readEntry, waysOf } from './entry.ts';
import { headingsOf, unclearHeadings } from './headings.ts';
import { type DraftRow, journalsOf, type NewJournal } from './journals.ts';
import { type Condition, type EntryTemplate, type HeaderKey, type Mapping, readMapping } from './mapping.ts';
import { type ImportProblem, RowProblems } from './problem.ts';
import { type Row, readTable, type Table } from './table.ts';
import { type CellReader, cellReader, filled, holesOf, plainHeading } from './template.ts';
import { type ImportHint, type Understand, verify } from './verify.ts';

/** All that an import would do; it does it only without a problem. */
export interface ImportPlan {
  table: string;
  rows: number;
  /** Rows that the mapping leaves out. */
  skipped: number;
  journals: NewJournal[];
  /** How dates of figures were read. */
  dates: OrderDecision;
  /** Columns that nothing was read from. */
  unread: string[];
  /** Observations that were left out because the table says 0, with the number of rows. */
  zeros: ReadonlyMap<string, number>;
  hints: ImportHint[];
  problems: ImportProblem[];
}

interface ImportFile {
  name: string;
  text: string;
}

interface Target {
  /** The files of the room as it is. */
  existing: readonly SourceFile[];
  /** Folder below `pairs/`, or empty. */
  into: string;
  clock: Clock;
  understand: Understand;
}

/** The plan of an import of which nothing is understood yet. */
export function emptyPlan(table: string, problems: ImportProblem[]): ImportPlan {
  return {
    table,
    rows: 0,
    skipped: 0,
    journals: [],
    dates: { order: null, because: null },
    unread: [],
    zeros: new Map(),
    hints: [],
    problems,
  };
}

/** Turns a table into journals by its mapping. Whatever cannot be understood is a problem; nothing is guessed. */
export function planImport(tableFile: ImportFile, mappingFile: ImportFile, target: Target): ImportPlan {
  const problems: ImportProblem[] = [];
  const plan = emptyPlan(tableFile.name, problems);
  const mapping = readMapping(mappingFile.name, mappingFile.text, problems);
  if (mapping === null) return plan;
  const reading = readTable(tableFile.name, tableFile.text, mapping.separator);
  const { table } = reading;
  problems.push(...reading.problems);
  if (!reading.headless) problems.push(...unclearHeadings(mapping, table.headings));
  plan.rows = table.rows.length;
  if (problems.length > 0) return plan;
  const read = new Set([...headingsOf(mapping)].map(plainHeading));
  plan.unread = table.headings.filter((heading) => !read.has(plainHeading(heading)));

  const rows = new MappedRows(table, mapping, problems);
  plan.skipped = table.rows.length - rows.kept.length;
  const written = rows.dates();
  plan.dates = decideOrder(table.file, written, mapping.dates, problems);
  if (problems.length > 0) return plan;
  const drafts = rows.drafts(plan.dates);
  plan.zeros = rows.zeros;
  const { into, clock } = target;
  const layout = { table: table.file, today: clock.today, into, numbered: mapping.rows === 'clutches' };
  plan.journals = journalsOf(drafts, layout, problems);
  plan.hints = verify(table, target, plan.journals, problems);
  return plan;
}

interface KeptRow {
  row: Row;
  cell: CellReader;
  templates: EntryTemplate[];
}

/** The rows of a table that the mapping does not leave out, with the entries that are for them. */
class MappedRows {
  readonly kept: KeptRow[] = [];
  readonly zeros = new Map<string, number>();
  readonly #table: Table;
  readonly #mapping: Mapping;
  readonly #problems: ImportProblem[];

  constructor(table: Table, mapping: Mapping, problems: ImportProblem[]) {
    this.#table = table;
    this.#mapping = mapping;
    this.#problems = problems;
    const columns = new Map(table.headings.map((heading, index) => [plainHeading(heading), index]));
    for (const row of table.rows) {
      const cell = cellReader(row, columns, mapping.nothing, mapping.words);
      if (mapping.skip.length > 0 && holds(mapping.skip, cell)) continue;
      const templates = mapping.log.filter(({ when }) => holds(when, cell));
      if (templates.length > 0) this.kept.push({ row, cell, templates });
      else this.#problemsOf(row).add(...this.#unmatched(cell));
    }
  }

  /** Every date of the rows, as it is written. */
  dates(): WrittenDate[] {
    return this.kept.flatMap(({ row, cell, templates }) =>
      templates.flatMap(({ fields: { pairs } }) =>
        [...waysOf(pairs, 'date'), ...waysOf(pairs, 'after')].flatMap(({ base }) => {
          const text = filled(base, cell);
          if (text === null) return [];
          const column = holesOf(base)
            .map(({ heading }) => heading)
            .join(', ');
          return [{ row: row.number, column, text, form: dateForm(text) }];
        }),
      ),
    );
  }

  drafts({ order }: OrderDecision): DraftRow[] {
    const dates = { order, serials: this.#mapping.serials };
    return this.kept.flatMap(({ row, cell, templates }) => {
      const problems = this.#problemsOf(row);
      const header = this.#header(cell, problems);
      const before = this.#problems.length;
      const entries = templates.flatMap((template) => {
        const { entry, zeros } = readEntry(template, cell, dates, problems);
        for (const key of zeros) this.zeros.set(key, (this.zeros.get(key) ?? 0) + 1);
        return entry ?? [];
      });
      if (entries.length === 0 && this.#problems.length === before) {
        problems.add(
          null,
          'nothing of this row would be written',
          'leave it out of the table, or `skip:` it',
        );
      }
      return header === null || entries.length === 0 ? [] : [{ row: row.number, header, entries }];
    });
  }

  #header(cell: CellReader, problems: RowProblems): Map<HeaderKey, string> | null {
    const header = new Map<HeaderKey, string>();
    for (const [key, template] of this.#mapping.header) {
      const text = filled(template, cell);
      if (text !== null) header.set(key, text);
    }
    if (header.has('pair')) return header;
    const template = this.#mapping.header.get('pair');
    problems.add(template === undefined ? null : (holesOf(template)[0]?.heading ?? null), 'no pair');
    return null;
  }

  /** Why no entry of the mapping is for a row. */
  #unmatched(cell: CellReader): [column: string | null, text: string, hint: string] {
    const heading = this.#mapping.log.flatMap(({ when }) => when)[0]?.heading ?? '';
    const said = cell(heading);
    const text = said === null ? 'says nothing' : `the mapping does not say what \`${said}\` means`;
    return [heading, text, `add an entry with \`when: {${heading}: ${said ?? '…'}}\`, or \`skip:\` it`];
  }

  #problemsOf({ number }: Row): RowProblems {
    return new RowProblems(this.#table.file, number, this.#problems);
  }
}

function holds(condition: Condition, cell: CellReader): boolean {
  return condition.every(({ heading, words }) => words.has(cell(heading)?.toLowerCase() ?? ''));
}
