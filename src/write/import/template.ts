import type { Row } from './table.ts';

/** Text of the mapping with columns of the table in it: `<year>-<box>`. */
export interface Template {
  source: string;
  parts: (string | Hole)[];
}

/** A column of the table, by its heading. */
export interface Hole {
  heading: string;
}

/** Where the cells of a row are, by the headings as the mapping writes them. */
export type Columns = ReadonlyMap<string, number>;

/** Headings are compared without capitals and with single blanks. */
export function plainHeading(heading: string): string {
  return heading.trim().replace(/\s+/g, ' ').toLowerCase();
}

export function templateOf(source: string): Template {
  const parts = source
    .split(/(<[^<>]+>)/)
    .filter((part) => part !== '')
    .map((part) => (/^<.+>$/.test(part) ? { heading: part.slice(1, -1).trim() } : part));
  return { source, parts };
}

export function holesOf({ parts }: Template): Hole[] {
  return parts.filter((part): part is Hole => typeof part !== 'string');
}

/** What the cells of a row say, each by its heading; null where it says nothing. */
export type CellReader = (heading: string) => string | null;

/**
 * The cells of one row.
 *
 * @param nothing what is written into cells that say nothing, besides leaving them empty
 * @param words what stands in the table for what is written into journals, by column
 */
export function cellReader(
  { cells }: Row,
  columns: Columns,
  nothing: ReadonlySet<string>,
  words: ReadonlyMap<string, ReadonlyMap<string, string>>,
): CellReader {
  return (heading) => {
    const name = plainHeading(heading);
    const cell = cells[columns.get(name) ?? -1] ?? '';
    if (cell === '' || nothing.has(cell.toLowerCase())) return null;
    return words.get(name)?.get(cell.toLowerCase()) ?? cell;
  };
}

/** The text with the row's cells in it; null where one of them says nothing. */
export function filled({ parts }: Template, cell: CellReader): string | null {
  const texts = parts.map((part) => (typeof part === 'string' ? part : cell(part.heading)));
  return texts.includes(null) ? null : texts.join('').trim();
}

/** For notes: cells that say nothing leave a gap; null where all of them do. */
export function filledLoosely({ parts }: Template, cell: CellReader): string | null {
  const holes = parts.filter((part) => typeof part !== 'string');
  if (holes.length > 0 && holes.every(({ heading }) => cell(heading) === null)) return null;
  const text = parts.map((part) => (typeof part === 'string' ? part : (cell(part.heading) ?? ''))).join('');
  return text.replace(/\s+/g, ' ').replace(/^[\s,;:/-]+|(?<![\s,;:/-])[\s,;:/-]+$/g, '') || null;
}

/** A sum: `<eggs> - <hatched>`. */
export interface Sum {
  terms: { sign: 1 | -1; term: Template }[];
}

/** Before a sign with blanks around it. */
const SIGN = /(?<!\s)\s+(?=[+-]\s)/;
const OR = /(?<!\s)\s+or\s+/;
const TERM = /^(?:<[^<>]+>|\d+)$/;

/** The text split where it is so written, but within no heading. */
function splitBetweenHeadings(source: string, separator: RegExp): string[] {
  const pieces = [''];
  for (const part of source.split(/(<[^<>]+>)/)) {
    const [first = '', ...rest] = part.startsWith('<') ? [part] : part.split(separator);
    pieces.push((pieces.pop() ?? '') + first, ...rest);
  }
  return pieces;
}

/** The text as a sum of whole numbers and columns, or null where it is none. */
export function sumOf(source: string): Sum | null {
  const [first = '', ...rest] = splitBetweenHeadings(source.trim(), SIGN);
  const sum = { terms: [{ sign: 1 as const, term: templateOf(first) }, ...rest.map(signed)] };
  const plain = sum.terms.every(({ term }) => TERM.test(term.source));
  return plain && rest.length > 0 && sum.terms.some(({ term }) => holesOf(term).length > 0) ? sum : null;
}

function signed(text: string): Sum['terms'][number] {
  return { sign: text.startsWith('-') ? -1 : 1, term: templateOf(text.slice(1).trim()) };
}

/** The figures of a whole number, of which a spreadsheet may have made `4.0` or `4,0`; null where a cell is none. */
export function wholeNumber(text: string): string | null {
  return /^(\d+)(?:[.,]0{1,2})?$/.exec(text)?.[1] ?? null;
}

/** A sum's value; null where a cell says nothing; the text of the first cell that is no whole number. */
export function sumValue({ terms }: Sum, cell: CellReader): number | null | { notANumber: string } {
  let value = 0;
  for (const { sign, term } of terms) {
    const text = filled(term, cell);
    if (text === null) return null;
    const number = wholeNumber(text);
    if (number === null) return { notANumber: text };
    value += sign * Number(number);
  }
  return value;
}

/** One way to come by a date: a column, or several, and days to add. */
export interface DateTemplate {
  source: string;
  base: Template;
  /** Days after it; null where the date stands in the table. */
  offset: Sum | null;
}

/** `<hatched on> or <sitting> + 13`: the first of these for which the row has something counts. */
export function dateTemplates(source: string): DateTemplate[] {
  return splitBetweenHeadings(source.trim(), OR).map((way) => {
    const [base = '', ...days] = splitBetweenHeadings(way, SIGN);
    return {
      source: way,
      base: templateOf(base),
      offset: days.length === 0 ? null : { terms: days.map(signed) },
    };
  });
}
