import { CsvError, type Info, parse } from 'csv-parse/sync';
import { unmarked } from '../../journal/text/formula.ts';
import { LOST } from '../../journal/text/prepare.ts';
import { type ImportProblem, problemIn } from './problem.ts';

/** One row below the headings. */
export interface Row {
  /** As a spreadsheet numbers it: the headings are row 1, a cell with line breaks is still one row. */
  number: number;
  /** Without blanks around them and without the mark against formulas; as many as there are headings. */
  cells: string[];
}

export interface Table {
  file: string;
  headings: string[];
  rows: Row[];
}

/** A table, or why it is none. */
export interface TableReading {
  table: Table;
  problems: ImportProblem[];
}

export const separators = { comma: ',', semicolon: ';', tab: '\t' } as const;

export type Separator = keyof typeof separators;

/**
 * Reads a table of RFC 4180: cells in quotes may hold separators, line breaks and doubled quotes; every row has as many
 * cells as there are headings. Spreadsheets of some countries put semicolons or tabs for commas: the separator that
 * gives the most headings is taken. Rows without any text are passed over.
 */
export function readTable(file: string, text: string, separator: Separator | null = null): TableReading {
  const problems: ImportProblem[] = [];
  const delimiter = separator === null ? likelySeparator(text) : separators[separator];
  const records = recordsOf(file, text, delimiter, problems);
  const [first = [], ...others] = records;
  const headings = first.map((heading) => heading.trim());
  while (headings.at(-1) === '') headings.pop();
  const rows: Row[] = [];
  for (const [index, record] of others.entries()) {
    const cells = record.map((cell) => unmarked(cell.trim()));
    if (cells.every((cell) => cell === '')) continue;
    const row = index + 2;
    const width = cells.findLastIndex((cell) => cell !== '') + 1;
    if (width > headings.length || cells.length < headings.length) {
      const said = `${cells.length} cells, but there are ${headings.length} headings`;
      const hint = 'put a cell that holds a separator or a line break in double quotes';
      problems.push(problemIn(file, { row }, said, hint));
    } else if (cells.some((cell) => cell.includes(LOST))) {
      const column = headings[cells.findIndex((cell) => cell.includes(LOST))] ?? null;
      const hint = 'save the table as CSV in UTF-8';
      problems.push(problemIn(file, { row, column }, 'a letter that cannot be read', hint));
    } else rows.push({ number: row, cells: cells.slice(0, headings.length) });
  }
  if (problems.length === 0 && rows.length === 0)
    problems.push(problemIn(file, {}, 'no row below the headings'));
  return { table: { file, headings, rows }, problems };
}

/** All records up to the first that breaks the rules of CSV, which is a problem. */
function recordsOf(file: string, text: string, delimiter: string, problems: ImportProblem[]): string[][] {
  const records: string[][] = [];
  try {
    parse(text, {
      delimiter,
      bom: true,
      relax_column_count: true,
      record_delimiter: ['\r\n', '\n', '\r'],
      on_record: (record: string[], _: Info) => {
        records.push(record);
        return null;
      },
    });
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const [what, hint] = quotes[error.code] ?? [error.message, null];
    problems.push(problemIn(file, { row: records.length + 1 }, what, hint));
  }
  return records;
}

const quotes: Partial<Record<CsvError['code'], [string, string]>> = {
  CSV_QUOTE_NOT_CLOSED: ['a quote is opened and never closed', 'close it, or double it inside of a cell: ""'],
  INVALID_OPENING_QUOTE: [
    'a quote stands inside of a cell that has none around it',
    'put the cell in double quotes and double the one inside: "5"" pot"',
  ],
  CSV_INVALID_CLOSING_QUOTE: [
    'text follows where a quote has closed',
    'double the quotes inside of a cell: "the ""old"" hen"',
  ],
};

function likelySeparator(text: string): string {
  const heading = text.slice(0, 1 + Math.max(0, text.search(/[\r\n]|$/)));
  const bare = heading.replace(/"(?:[^"]|"")*"/g, '');
  const [best] = Object.values(separators)
    .map((mark) => ({ mark, times: bare.split(mark).length }))
    .sort((a, b) => b.times - a.times);
  return best?.mark ?? separators.comma;
}
