import type { Finding } from '../../findings/finding.ts';
import { Empty, Fields, List, type Node, Text } from '../nodes.ts';
import { append } from './append.ts';
import type { Lines } from './lines.ts';
import { parseYaml } from './yaml.ts';

/** Longer lines are left to YAML, which has limits for keys of its own. */
const LONGEST = 1000;

const LOG = /(?:^|\n)log: *\r?\n/;
/** From a line's first character: indentation and dash of an entry in braces. */
const ENTRY = /( *)- +(?=\{)/y;
/** No entry: a comment or nothing. */
const NOTHING = / *(?:#[^\n]*)?/y;

const BLANKS = / */y;
/** Words that mean themselves to YAML wherever they stand in braces: letters, digits and a few signs, single blanks. */
const PLAIN =
  /(?:[A-Za-z0-9]|~(?=\d))(?:[\w./+-]|:(?=[A-Za-z0-9]))*(?: [A-Za-z0-9](?:[\w./+-]|:(?=[A-Za-z0-9]))*)*/y;
/** Without escapes, and without characters that cannot be printed. */
const QUOTED =
  /"((?:[ !#-[\]-~]|[\u00a0-\u2027\u2030-\ud7ff\ue000-\ufefe\uff00-\ufffd]|[\ud800-\udbff][\udc00-\udfff])*)"/y;

/**
 * Reads a journal whose log ends the file with an entry a line, as `record` writes it: many times faster than YAML does,
 * and with the very same result. A line of an entry that is not known for certain is parsed by itself; null where anything
 * else stands in the log, as then only the file as a whole can tell.
 */
export function readPlainLog(lines: Lines, text: string): { root: Fields; findings: Finding[] } | null {
  const log = LOG.exec(text);
  if (log === null) return null;
  const start = log.index + log[0].length;
  const head = parseYaml(lines, { text: text.slice(0, start), base: 0 });
  if (!('root' in head) || !(head.root instanceof Fields)) return null;
  const last = head.root.pairs.at(-1);
  if (last === undefined) return null;
  const { findings } = head;
  const list = new Log(lines, text, findings).read(start);
  if (list === null) return null;
  const pairs = [...head.root.pairs.slice(0, -1), [last[0], list] as const];
  return { root: new Fields(pairs, head.root.at, 'block'), findings };
}

/** Reads the lines of a log. The scanning methods give null, wherever they stand, for what is not known for certain. */
class Log {
  readonly #lines: Lines;
  readonly #text: string;
  readonly #findings: Finding[];
  #at = 0;

  constructor(lines: Lines, text: string, findings: Finding[]) {
    this.#lines = lines;
    this.#text = text;
    this.#findings = findings;
  }

  /** The entries from an offset to the end of the text. */
  read(start: number): List | null {
    const items: Node[] = [];
    let first = -1;
    let margin = '';
    for (let from = start; from < this.#text.length; ) {
      const newline = this.#text.indexOf('\n', from);
      const to = newline < 0 ? this.#text.length : newline;
      this.#at = from;
      const indent = this.#match(ENTRY)?.[1];
      if (indent === undefined) {
        this.#at = from;
        this.#match(NOTHING);
        if (!this.#ends(to)) return null;
      } else {
        if (first < 0) {
          first = from + indent.length;
          margin = indent;
        }
        const item = indent === margin && to - from <= LONGEST ? this.#entry(from, to) : null;
        if (item === null) return null;
        items.push(item);
      }
      from = to + 1;
    }
    return first < 0 ? null : new List(items, this.#lines.place(first, this.#text.length));
  }

  #entry(from: number, to: number): Node | null {
    const entry = this.#map();
    if (entry !== null && this.#ends(to)) return entry;
    const parsed = parseYaml(this.#lines, { text: this.#text.slice(from, to), base: from });
    if (!('root' in parsed) || !(parsed.root instanceof List)) return null;
    append(this.#findings, parsed.findings);
    return parsed.root.items[0] as Node;
  }

  #map(): Fields | null {
    const from = this.#at++;
    const pairs: (readonly [Text, Node])[] = [];
    do {
      this.#match(BLANKS);
      const key = this.#plain();
      if (key === null || pairs.some(([{ text }]) => text === key.text)) return null;
      const value = this.#is(':') ? this.#value(key.text) : new Empty(key.at);
      if (value === null) return null;
      pairs.push([key, value]);
      this.#match(BLANKS);
    } while (this.#is(','));
    return this.#is('}') ? new Fields(pairs, this.#lines.place(from, this.#at), 'flow') : null;
  }

  /** What stands behind a colon. A note without quotes may go on behind its comma, which is not for us to judge. */
  #value(key: string): Node | null {
    if (this.#match(BLANKS)?.[0] === '') return null;
    const sign = this.#text[this.#at];
    if (sign === '"') return this.#quoted();
    if (key === 'note') return null;
    if (sign === '{') return this.#map();
    return sign === '[' ? this.#list() : this.#plain();
  }

  #list(): List | null {
    const from = this.#at++;
    const items: Node[] = [];
    do {
      this.#match(BLANKS);
      const item = this.#plain();
      if (item === null) return null;
      items.push(item);
      this.#match(BLANKS);
    } while (this.#is(','));
    return this.#is(']') ? new List(items, this.#lines.place(from, this.#at)) : null;
  }

  #plain(): Text | null {
    const from = this.#at;
    const match = this.#match(PLAIN);
    return match === null ? null : new Text(match[0], this.#lines.place(from, this.#at));
  }

  #quoted(): Text | null {
    const from = this.#at;
    const match = this.#match(QUOTED);
    return match === null ? null : new Text(match[1] as string, this.#lines.place(from, this.#at));
  }

  /** What a sticky expression finds here; goes on behind it. */
  #match(expression: RegExp): RegExpExecArray | null {
    expression.lastIndex = this.#at;
    const match = expression.exec(this.#text);
    if (match !== null) this.#at = expression.lastIndex;
    return match;
  }

  #ends(line: number): boolean {
    return this.#at === line || this.#text[this.#at] === '\r';
  }

  #is(sign: string): boolean {
    if (this.#text[this.#at] !== sign) return false;
    this.#at++;
    return true;
  }
}
