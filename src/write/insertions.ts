import type { Place } from '../findings/finding.ts';
import { Empty, Fields, List, type Node } from '../journal/nodes.ts';
import { blockOf, lineOf } from '../journal/print.ts';
import { offsetAfter } from '../words.ts';
import { flowEnd } from './braces.ts';
import { dashOf, endsOfList, type Line, lineEndAt, linesOf } from './log-lines.ts';

/** Text to be put into a file, and where. */
export interface Insertion {
  at: number;
  text: string;
}

/** The columns by which a log is indented under its key where nothing shows the keeper's own way. */
const USUAL_INDENT = 2;

/**
 * Ways to put an entry at the end of the log of `owner`, the mapping that has it or will have it, the most natural first.
 * The entry follows the style of the last one. Whether a way is sound shows when the text is read again.
 *
 * @param text without a byte order mark
 * @param root whether the mapping is the whole file
 */
export function insertionsOf(text: string, owner: Fields, entry: Fields, root: boolean): Insertion[] {
  const lines = linesOf(text);
  const log = owner.pairs.findLast(([key]) => key.text === 'log');
  if (log === undefined) return beginLog(text, lines, owner, entry, root);
  const [key, value] = log;
  const opening = offsetOf(text, lines, value.at);
  if (value instanceof List && text[opening] === '[') return intoBrackets(text, lines, opening, value, entry);
  if (!(value instanceof List || value instanceof Empty)) return [];
  const margin = key.at.column - 1;
  const head = key.at.line - 1;
  const last = value instanceof List ? value.items.at(-1) : undefined;
  const like = last === undefined ? null : dashOf(text, lines, last.at.line - 1);
  const dash = like ?? { before: ' '.repeat(margin + USUAL_INDENT), behind: ' ' };
  const written = itemLines(entry, last, dash);
  return endsOfList(text, lines, { head, margin, dash: dash.before.length }).map((end) =>
    behindLine(text, lines, end, written),
  );
}

/** The log's first entry, and its key before it. */
function beginLog(
  text: string,
  lines: readonly Line[],
  owner: Fields,
  entry: Fields,
  root: boolean,
): Insertion[] {
  if (owner.style === 'flow') {
    const end = flowEnd(text, offsetOf(text, lines, owner.at));
    const log = `log: [${lineOf(entry).slice(2)}]`;
    return end === null ? [] : [{ at: end.last, text: separated(end.sign, log) }];
  }
  const margin = owner.at.column - 1;
  const indent = ' '.repeat(margin);
  const written = [`${indent}log:`, `${indent}${' '.repeat(USUAL_INDENT)}${lineOf(entry)}`];
  const head = owner.at.line - 1;
  const ends = root
    ? [lines.length - 1]
    : endsOfList(text, lines, { head, margin: margin - 1, dash: margin });
  return ends.map((end) => behindLine(text, lines, end, written));
}

function intoBrackets(
  text: string,
  lines: readonly Line[],
  opening: number,
  log: List,
  entry: Fields,
): Insertion[] {
  const end = flowEnd(text, opening);
  if (end === null) return [];
  const item = lineOf(entry).slice(2);
  const lastLine = log.items.at(-1)?.at.line ?? 0;
  const line = lines[lastLine - 1];
  const before = line === undefined ? '' : text.slice(line.from, line.from + line.indent);
  // A list with an item a line gets another line.
  const alone = line !== undefined && line.from > opening;
  const gap = alone ? `${lineEndAt(text, lines, lastLine - 1)}${before}` : ' ';
  return [{ at: end.last, text: separated(end.sign, item, gap) }];
}

function separated(sign: string, item: string, gap = ' '): string {
  if (sign === '[' || sign === '{') return item;
  return sign === ',' ? `${gap}${item}` : `,${gap}${item}`;
}

function itemLines(
  entry: Fields,
  like: Node | undefined,
  { before, behind }: { before: string; behind: string },
) {
  if (!(like instanceof Fields && like.style === 'block'))
    return [`${before}-${behind}${lineOf(entry).slice(2)}`];
  const hanging = `${before} ${' '.repeat(behind.length)}`;
  return blockOf(entry).map((line, index) => `${index === 0 ? `${before}-${behind}` : hanging}${line}`);
}

/** A file that ends without a line end goes on to do so. */
function behindLine(
  text: string,
  lines: readonly Line[],
  end: number,
  written: readonly string[],
): Insertion {
  const eol = lineEndAt(text, lines, end);
  const line = lines[end];
  if (line === undefined) return { at: text.length, text: written.map((one) => one + eol).join('') };
  return line.next > line.to
    ? { at: line.next, text: written.map((one) => one + eol).join('') }
    : { at: line.to, text: written.map((one) => eol + one).join('') };
}

/** Offset of a place, whose columns count code points. */
function offsetOf(text: string, lines: readonly Line[], { line, column }: Place): number {
  return offsetAfter(text, column - 1, lines[line - 1]?.from ?? text.length);
}
