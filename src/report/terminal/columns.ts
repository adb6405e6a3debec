import { pad, truncate, widthOf } from './width.ts';

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
  const number = Math.max(...rows.map((row) => row.length));
  const widths = Array.from({ length: number }, (_, column) =>
    rows.reduce((widest, row) => Math.max(widest, widthOf(row[column] ?? '')), 0),
  );
  const total = widths.reduce((sum, wide) => sum + wide + GAP, indent - GAP);
  widths[cut] = Math.max(4, (widths[cut] as number) - Math.max(0, total - width));
  return rows.map((row) => {
    const cells = widths.map((wide, column) => {
      const text = truncate(row[column] ?? '', wide);
      return right.includes(column) ? ' '.repeat(wide - widthOf(text)) + text : pad(text, wide);
    });
    return `${' '.repeat(indent)}${cells.join(' '.repeat(GAP))}`.trimEnd();
  });
}
