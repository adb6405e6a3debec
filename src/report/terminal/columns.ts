import Table from 'cli-table3';
import { max } from 'd3-array';
import { truncate, widthOf } from './width.ts';

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

/** No lines and no colours of the library's own: a stream without colour must stay without. */
const PLAIN = {
  style: { head: [], border: [], 'padding-left': 0, 'padding-right': 0 },
  chars: Object.fromEntries(
    ['top', 'bottom', 'left', 'right', 'mid'].flatMap((side) =>
      [side, `${side}-mid`, `${side}-left`, `${side}-right`, 'left-mid', 'right-mid', 'mid-mid'].map(
        (name) => [name, ''],
      ),
    ),
  ),
};

/** Rows of cells below one another, each column as wide as its widest cell. The first row is the head. */
export function columns(
  rows: readonly string[][],
  { width, indent, right = [], cut }: ColumnsOptions,
): string[] {
  const number = max(rows, (row) => row.length) ?? 0;
  const widest = (column: number) => max(rows, (row) => widthOf(row[column] ?? '')) ?? 0;
  const widths = Array.from({ length: number }, (_, column) => widest(column));
  const total = widths.reduce((sum, wide) => sum + wide + GAP, indent - GAP);
  const room = Math.max(4, (widths[cut] ?? 0) - Math.max(0, total - width));
  const table = new Table({
    ...PLAIN,
    chars: { ...PLAIN.chars, middle: ' '.repeat(GAP) },
    colAligns: widths.map((_, column) => (right.includes(column) ? 'right' : 'left')),
  });
  for (const row of rows) {
    const cells = Array.from({ length: number }, (_, column) => row[column] ?? '');
    table.push(cells.map((text, column) => (column === cut ? truncate(text, room) : text)));
  }
  return table
    .toString()
    .split('\n')
    .map((line) => `${' '.repeat(indent)}${line}`.trimEnd());
}
