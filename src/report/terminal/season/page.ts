import type { Styles } from '../style.ts';
import { wrap } from '../width.ts';

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
