import type { Styles } from './style.ts';
import { wrap } from './width.ts';

/** The stream that a text is laid out for. */
export interface Screen {
  width: number;
  color: boolean;
}

/** What each part of a page is laid out with. */
export interface Page {
  width: number;
  look: Styles;
}

/** The width that a page is laid out for: on a narrower screen its lines are longer, and of a wider one no more is used. */
export function pageWidth(width: number, least: number, most: number): number {
  return Math.min(Math.max(width, least), most);
}

/** A page's text: its blocks with an empty line between them, those without lines left out. */
export function textOf(blocks: readonly (readonly string[])[]): string {
  return blocks
    .filter((lines) => lines.length > 0)
    .map((lines) => `${lines.join('\n')}\n`)
    .join('\n');
}

/** A part of the page under its title; no title without lines. */
export function section(title: string, lines: readonly string[], { look }: Pick<Page, 'look'>): string[] {
  return lines.length === 0 ? [] : [look.heading(title), ...lines];
}

/** A paragraph, set in by some blanks; the lines after its first by some more. */
export function indented(
  text: string,
  { width }: Pick<Page, 'width'>,
  { indent = 2, hanging = 0 } = {},
): string[] {
  return wrap(text, width - indent, { hanging }).map((line) => ' '.repeat(indent) + line);
}

/** A paragraph set in, said quietly. */
export function aside(text: string, page: Page): string[] {
  return indented(text, page).map((line) => page.look.muted(line));
}
