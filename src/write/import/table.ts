import { CsvError, type Info, parse } from 'csv-parse/sync';
import { unmarked } from '../../journal/text/formula.ts';
import { LOST } from '../../journal/text/prepare.ts';
import { count } from '../../words.ts';
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
  /** Whether its first row is none of headings, so that nothing can be said of its columns. */
  headless: boolean;
}

export const separators = { comma: ',', semicolon: ';', tab: '\t', bar: '|' } as const;

/** Longer than any row of headings. */
const HEAD = 10_000;

export type Separator = keyof typeof separators;

/**
 * Reads a table of RFC 4180: cells in quotes may hold separators, line breaks and doubled quotes; every row has as many
 * cells as there are headings. Spreadsheets of some countries put semicolons or tabs for commas, databases bars: the separator that
 * gives the most headings is taken. Rows without any text are passed over.
 */
export function readTable(file: string, text: string, separator: Separator | null = null): TableReading {
  const problems: ImportProblem[] = [];
  // Some spreadsheets tell one another the separator in a line of its own.
  const [told = '', mark] = /^\ufeff?sep=(.)\r?\n/i.exec(text) ?? [];
  const delimiter = separator === null ? (mark ?? likelySeparator(text)) : separators[separator];
  const records = recordsOf(file, text.slice(told.length), delimiter, problems);
  const above = records.findIndex((record) => widthOf(record) > 0) + (told === '' ? 1 : 2);
  const [first = [], ...others] = records.slice(records.findIndex((record) => widthOf(record) > 0));
  const headings = first.slice(0, widthOf(first)).map((heading) => heading.trim());
  const [next] = others;
  const named = headings.filter((heading) => heading !== '').length;
  if (next !== undefined && named * 2 <= widthOf(next)) {
    const said = `${count(named, 'heading')}, but the next row has ${count(widthOf(next), 'cell')}: is this a title above the table?`;
    const hint = 'take out titles and merged cells, so that the first row has one heading over each column';
    problems.push(problemIn(file, { row: above }, said, hint));
    return { table: { file, headings, rows: [] }, problems, headless: true };
  }
  const rows: Row[] = [];
  for (const [index, record] of others.entries()) {
    const cells = record.map((cell) => unmarked(cell.trim()));
    if (cells.every((cell) => cell === '')) continue;
    const row = above + index + 1;
    const width = widthOf(cells);
    if (width > headings.length || cells.length < headings.length) {
      const said = `${count(cells.length, 'cell')}, but there ${headings.length === 1 ? 'is' : 'are'} ${count(headings.length, 'heading')}`;
      const hint =
        width > headings.length
          ? 'put a cell that holds a separator in double quotes'
          : 'put a cell that holds a line break in double quotes, or the separators of the empty cells at the end';
      problems.push(problemIn(file, { row }, said, hint));
    } else if (cells.some((cell) => cell.includes(LOST))) {
      const column = headings[cells.findIndex((cell) => cell.includes(LOST))] ?? null;
      const hint = 'save the table as CSV in UTF-8';
      problems.push(problemIn(file, { row, column }, 'a letter that cannot be read', hint));
    } else rows.push({ number: row, cells: cells.slice(0, headings.length) });
  }
  if (problems.length === 0 && rows.length === 0)
    problems.push(problemIn(file, {}, 'no row below the headings'));
  return { table: { file, headings, rows }, problems, headless: headings.length === 0 };
}

/** Cells up to the last that says something. */
function widthOf(record: readonly string[]): number {
  return record.findLastIndex((cell) => cell.trim() !== '') + 1;
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

/** By the first line that has any: a title above the table has none. */
function likelySeparator(text: string): string {
  const marks = Object.values(separators);
  const lines = text
    .slice(0, HEAD)
    .replace(/"(?:[^"]|"")*"/g, '')
    .split(/[\r\n]+/);
  const heading = lines.find((line) => marks.some((mark) => line.includes(mark))) ?? '';
  const [best] = marks
    .map((mark) => ({ mark, times: heading.split(mark).length }))
    .sort((a, b) => b.times - a.times);
  return best?.mark ?? separators.comma;
}
