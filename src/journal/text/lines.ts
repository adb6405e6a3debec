import type { Place } from '../../findings/finding.ts';

/** Finds line and column, in code points, of any offset into a file's text. Binary search over two tables. */
export class Lines {
  readonly file: string;
  readonly text: string;
  /** Offset of the first character of each line. */
  readonly #starts: number[] = [0];
  /** Offsets of the characters that take two UTF-16 units: columns count them once. */
  readonly #wide: number[] = [];
  /** Places are mostly asked for in the order of the text. */
  #last = 0;

  constructor(file: string, text: string) {
    this.file = file;
    this.text = text;
    for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) this.#starts.push(at + 1);
    for (const match of text.matchAll(/[\ud800-\udbff][\udc00-\udfff]/g)) this.#wide.push(match.index);
  }

  /** The stretch from one offset up to another, as far as it stays on the first one's line; of one sign alone, its place. */
  place(from: number, to = from): Place {
    const line = this.#lineOf(from);
    const start = this.#starts[line] as number;
    const end = Math.min(Math.max(to, from), this.lineEnd(from));
    const before = this.#wideBefore(from);
    const column = from - start - (before - this.#wideBefore(start)) + 1;
    const length = end - from - (this.#wideBefore(end) - before);
    return { file: this.file, line: line + 1, column, length: Math.max(1, length) };
  }

  /** Offset of the first character of the line in which the offset lies. */
  lineStart(offset: number): number {
    return this.#starts[this.#lineOf(offset)] as number;
  }

  /** Offset behind the last character of that line, its line end not counted. */
  lineEnd(offset: number): number {
    const line = this.#lineOf(offset);
    const next = this.#starts[line + 1];
    if (next === undefined) return this.text.length;
    return this.text.charCodeAt(next - 2) === 13 ? next - 2 : next - 1;
  }

  #lineOf(offset: number): number {
    const near = this.#last;
    if (this.#holds(near, offset)) return near;
    this.#last = this.#holds(near + 1, offset) ? near + 1 : countUpTo(this.#starts, offset + 1) - 1;
    return this.#last;
  }

  #holds(line: number, offset: number): boolean {
    const start = this.#starts[line];
    const next = this.#starts[line + 1] ?? Number.POSITIVE_INFINITY;
    return start !== undefined && start <= offset && offset < next;
  }

  #wideBefore(offset: number): number {
    return this.#wide.length === 0 ? 0 : countUpTo(this.#wide, offset);
  }
}

/** How many of the sorted numbers are less than the limit. */
function countUpTo(sorted: readonly number[], limit: number): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((sorted[middle] as number) < limit) low = middle + 1;
    else high = middle;
  }
  return low;
}
