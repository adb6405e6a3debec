import Table from 'cli-table3';
import { max } from 'd3-array';
import { inTurn } from '../../grouped.ts';
import { sumOf } from '../../statistics/sums.ts';
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
  const filled = rows.map((row) => Array.from({ length: number }, (_, column) => row[column] ?? ''));
  const widths = widthsOf(filled, number);
  const total = indent + sumOf(widths) + GAP * (number - 1);
  const room = Math.max(4, (widths[cut] ?? 0) - Math.max(0, total - width));
  const cells = filled.map((row) =>
    row.map((text, column) => (column === cut ? truncate(text, room) : text)),
  );
  const ruler = widthsOf(cells, number).map((wide) => ' '.repeat(wide));
  const lines: string[] = [];
  // The library compares each cell with all rows before it: of 24,000 birds in one table that took 20 s.
  for (const part of inTurn(cells)) lines.push(...drawn([ruler, ...part], right).slice(1));
  return lines.map((line) => `${' '.repeat(indent)}${line}`.trimEnd());
}

/** How many columns of the terminal the widest cell of each column takes. */
function widthsOf(rows: readonly string[][], number: number): number[] {
  return Array.from({ length: number }, (_, column) => max(rows, (row) => widthOf(row[column] ?? '')) ?? 0);
}

/** One line a row. */
function drawn(rows: readonly string[][], right: readonly number[]): string[] {
  const table = new Table({
    ...PLAIN,
    chars: { ...PLAIN.chars, middle: ' '.repeat(GAP) },
    colAligns: rows[0]?.map((_, column) => (right.includes(column) ? 'right' : 'left')) ?? [],
  });
  for (const row of rows) table.push(row);
  return table.toString().split('\n');
}
