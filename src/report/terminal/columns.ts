import { max } from 'd3-array';
import { sumOf } from '../../statistics/sums.ts';
import { pad, padStart, truncate, widthOf } from './width.ts';

interface ColumnsOptions {
  width: number;
  /** Blanks before each line. */
  indent: number;
  /** Which columns hold numbers and end at the right; by position. */
  right?: readonly number[];
  /** Which column is cut where the line is too long. */
  cut: number;
}

const GAP = 2;

/** Rows of cells below one another, each column as wide as its widest cell. The first row is the head. */
export function columns(
  rows: readonly string[][],
  { width, indent, right = [], cut }: ColumnsOptions,
): string[] {
  const number = max(rows, (row) => row.length) ?? 0;
  const filled = rows.map((row) => Array.from({ length: number }, (_, column) => row[column] ?? ''));
  const wide = widths(filled, number);
  const room = Math.max(4, (wide[cut] ?? 0) - Math.max(0, indent + sumOf(wide) + GAP * (number - 1) - width));
  const cells = filled.map((row) =>
    row.map((text, column) => (column === cut ? truncate(text, room) : text)),
  );
  const drawn = widths(cells, number);
  return cells.map((row) => {
    const padded = row.map((text, column) =>
      (right.includes(column) ? padStart : pad)(text, drawn[column] ?? 0),
    );
    return `${' '.repeat(indent)}${padded.join(' '.repeat(GAP))}`.trimEnd();
  });
}

/** The columns that the widest cell of each takes. */
function widths(rows: readonly string[][], number: number): number[] {
  return Array.from({ length: number }, (_, column) => max(rows, (row) => widthOf(row[column] ?? '')) ?? 0);
}
