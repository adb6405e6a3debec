import { columns } from '../columns.ts';
import type { Styles } from '../style.ts';
import { widthOf, wrap } from '../width.ts';

/** What each part of a season's page is laid out with. */
export interface Page {
  width: number;
  look: Styles;
}

/** A part of the page under its title; no title without lines. */
export function section(title: string, lines: readonly string[], { look }: Page): string[] {
  return lines.length === 0 ? [] : [look.heading(title), ...lines];
}

/** A sentence, set in by two blanks. */
export function sentence(text: string, { width }: Page): string[] {
  return wrap(text, width - 2).map((line) => `  ${line}`);
}

/** The same, said quietly. */
export function aside(text: string, page: Page): string[] {
  return sentence(text, page).map((line) => page.look.muted(line));
}

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
