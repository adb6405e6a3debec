import { CONFLICT_MARK, DASH, DOCUMENT_MARK, KEY } from '../journal/text/line-shapes.ts';

/** One line of a file, by offsets into its text. */
export interface Line {
  from: number;
  /** Behind its last character, the line end not counted. */
  to: number;
  /** Behind its line end: where the next line begins. */
  next: number;
  /** Columns of blanks before its text. */
  indent: number;
  kind: 'blank' | 'comment' | 'text';
}

const LINE_END = /\r\n|\n|\r/g;

/** The lines of a text. What stands behind a last line end is no line. */
export function linesOf(text: string): Line[] {
  const lines: Line[] = [];
  const add = (from: number, to: number, next: number) => {
    const line = text.slice(from, to);
    const content = line.search(/[^ \t]/);
    const kind = content < 0 ? 'blank' : line[content] === '#' ? 'comment' : 'text';
    lines.push({ from, to, next, indent: Math.max(0, content), kind });
  };
  let from = 0;
  for (const { 0: end, index } of text.matchAll(LINE_END)) {
    add(from, index, index + end.length);
    from = index + end.length;
  }
  if (from < text.length) add(from, text.length, text.length);
  return lines;
}

/**
 * Behind which of the lines a new item of a block list can stand, the best place first: behind its last item and the
 * comments that belong to it, else behind other lines of its section. A list may be indented no more than its key.
 *
 * @param head index of the line with the list's key
 * @param margin columns before that key
 * @param dash columns before the dashes, or before those that will be
 */
export function endsOfList(
  text: string,
  lines: readonly Line[],
  { head, margin, dash }: { head: number; margin: number; dash: number },
): number[] {
  let last = head;
  let lastUsed = head;
  let stop = head + 1;
  for (; stop < lines.length; stop++) {
    const { kind } = lines[stop] as Line;
    if (kind === 'blank') continue;
    if (kind === 'text') {
      if (endsSection(text, lines[stop] as Line, margin)) break;
      last = stop;
    }
    lastUsed = stop;
  }
  let commented = last;
  for (let i = last + 1; i < stop; i++) {
    const { kind, indent } = lines[i] as Line;
    if (kind === 'comment' && indent >= Math.max(1, dash)) commented = i;
    else if (kind !== 'blank') break;
  }
  return [...new Set([commented, last, lastUsed, stop - 1])];
}

/** Whether a line is no longer part of what stands under a key at the margin. */
function endsSection(text: string, { from, to, indent }: Line, margin: number): boolean {
  const line = text.slice(from, to);
  if (DOCUMENT_MARK.test(line)) return true;
  if (CONFLICT_MARK.test(line) || indent > margin) return false;
  if (DASH.test(line)) return indent < margin;
  return indent < margin || KEY.test(line);
}

/** The blanks before and behind the dash of an item, as it stands on this line or on one above it. */
export function dashOf(
  text: string,
  lines: readonly Line[],
  at: number,
): { before: string; behind: string } | null {
  for (let i = at; i >= 0; i--) {
    const { from, to } = lines[i] as Line;
    const [, before, behind] = /^([ \t]*)-([ \t]*)/.exec(text.slice(from, to)) ?? [];
    if (before !== undefined && behind !== undefined) return { before, behind: behind === '' ? ' ' : behind };
  }
  return null;
}

/** How lines end around there: as that line does, else as the first of the file, else with a line feed. */
export function lineEndAt(text: string, lines: readonly Line[], at: number): string {
  const own = lines[at];
  const first = lines[0];
  const end = (line: Line | undefined) => (line === undefined ? '' : text.slice(line.to, line.next));
  return end(own) || end(first) || '\n';
}
