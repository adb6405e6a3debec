import { columns } from '../columns.ts';
import type { Page } from '../page.ts';
import { widthOf } from '../width.ts';

/** Rows with their head, and which of their columns end at the right. */
interface TableRows {
  rows: readonly string[][];
  right: readonly number[];
}

/** The first of several tables that fits on the page, its head said quietly; the last where none does. */
export function fitted(tables: readonly TableRows[], { width, look }: Page): string[] {
  const drawn = tables.map(({ rows, right }) => columns(rows, { width, indent: 2, right, cut: 0 }));
  const fits = drawn.find((lines) => lines.every((line) => widthOf(line) <= width));
  const [first = '', ...rest] = fits ?? drawn.at(-1) ?? [];
  return [look.muted(first), ...rest];
}

/** The rows without some of their columns. */
export function without(rows: readonly string[][], dropped: readonly number[]): string[][] {
  return rows.map((row) => row.filter((_, column) => !dropped.includes(column)));
}
