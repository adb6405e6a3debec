import type { Finding } from '../../findings/finding.ts';
import { Empty, Fields, List, type Node, Text } from '../nodes.ts';
import { lineOf } from '../print.ts';
import { append } from './append.ts';
import { DASH, KEY } from './line-shapes.ts';
import type { Lines } from './lines.ts';
import { mendedLine } from './mended.ts';
import { maskNote, rawNote } from './note.ts';
import { notAnEntry, type Trouble, type Why } from './trouble.ts';
import { type Parsed, parseYaml, type Slice, unquotedNote } from './yaml.ts';

/**
 * What a file's lists hold, the chief one first: `entries` stand for themselves, so that an unreadable one is one finding; `records` have
 * keys and lists of their own, which are read one by one in turn.
 */
export type Shape = Readonly<Record<string, 'entries' | 'records'>>;

/** One line of a slice. */
interface Line {
  from: number;
  /** Behind its line end. */
  to: number;
  indent: number;
  /** Without indentation; empty for blank lines and comments. */
  body: string;
}

/** The last list of entries that was read: its key, where it stands among the pairs, and what it holds. */
interface Log {
  key: Text;
  at: number;
  items: Node[];
}

/** An entry or record, however it is indented. */
const ENTRY_START = /^-[ \t]*(?:\{|date[ \t]*:)/;
/** An item of a list, also where the blank behind the dash of an entry is missing. */
const isItem = (body: string) => DASH.test(body) || ENTRY_START.test(body);

/** Of these no other line is the cure. */
const AS_IT_STANDS: readonly Why[] = ['outside-log', 'too-long', 'too-deep', 'tab', 'indent'];

/** What was meant as an entry, whatever stands in place of its dash. */
const ENTRY_LIKE = /^(?:[-\u2013\u2014\u2212*\u2022][ \t]*)?\{/;

/**
 * Reads a file that is no YAML as a whole, piece by piece: key by key, and the lists of its shape item by item. A piece
 * that cannot be read is one finding at its own lines; everything else counts.
 */
export class Recovery {
  readonly findings: Finding[] = [];
  readonly #lines: Lines;
  readonly #shape: Shape;
  #tabs = false;

  constructor(lines: Lines, shape: Shape) {
    this.#lines = lines;
    this.#shape = shape;
  }

  fields(slice: Slice): Fields {
    const pairs: (readonly [Text, Node])[] = [];
    let log: Log | null = null;
    for (const section of sectionsOf(slice)) {
      const end = this.#endOfKey(section);
      for (const [key, node] of this.#section(part(section, 0, end))) {
        if (this.#holds(key.text) === 'entries' && (node instanceof List || node instanceof Empty)) {
          log = { key, at: pairs.length, items: node instanceof List ? [...node.items] : [] };
        }
        pairs.push([key, node]);
      }
      if (end < section.text.length) this.#rejoin(log, pairs, part(section, end, section.text.length));
    }
    const at = this.#lines.place(slice.base, slice.base + slice.text.length);
    return new Fields(pairs, at, 'block');
  }

  /** Where a section's key ends that has its value behind it on the line, though entries follow; else the section's end. */
  #endOfKey({ text }: Slice): number {
    const lines = linesOf(text);
    const [name, behind] = keyOf(lines);
    const entry = lines.find(({ body }) => ENTRY_START.test(body));
    if (entry === undefined || name === '' || this.#holds(name) !== undefined) return text.length;
    return /^[ \t]*(?:[#|>]|$)/.test(behind) ? text.length : entry.from;
  }

  /** Entries behind a key that has a value of its own are of the log before it: a stray line takes none of them along. */
  #rejoin(log: Log | null, pairs: (readonly [Text, Node])[], slice: Slice): void {
    const lines = linesOf(slice.text);
    if (log === null) {
      this.#strays(slice, lines);
      return;
    }
    const { key, at, items } = log;
    const starts = lines.filter(({ body }) => isItem(body)).map(({ from }) => from);
    append(items, this.#itemsAt(slice, starts, 'entries'));
    // The list keeps this very array: a file may have as many stray lines as entries.
    pairs[at] = [key, new List(items, key.at)];
  }

  /** What the list under a key holds; undefined for one that is no list, or that nobody knows. */
  #holds(key: string): Shape[string] | undefined {
    return Object.hasOwn(this.#shape, key) ? this.#shape[key] : undefined;
  }

  #section(section: Slice): Fields['pairs'] {
    const lines = linesOf(section.text);
    const [name] = keyOf(lines);
    const holds = this.#holds(name);
    if (holds !== undefined && lines.some(({ body }) => isItem(body))) {
      return [this.#list(section, lines, name, holds)];
    }
    const parsed = parseYaml(this.#lines, section);
    if ('root' in parsed && parsed.root instanceof Fields) {
      append(this.findings, parsed.findings);
      return parsed.root.pairs;
    }
    const hasEntries = lines.some(({ body }) => ENTRY_START.test(body));
    // Under a key that nobody knows, or a misspelt one, entries are entries all the same.
    if (hasEntries && name !== '') return [this.#list(section, lines, name, 'entries')];
    if (hasEntries) this.#strays(section, lines);
    else this.#unreadable('unreadable-lines', section, parsed);
    return [];
  }

  /** Entries that stand in no log, as before the first key, are named one by one. */
  #strays(section: Slice, lines: Line[]): void {
    const [, ...starts] = lines.filter(({ body }) => isItem(body)).map(({ from }) => from);
    for (const [index, from] of [0, ...starts].entries()) {
      const entry = part(section, from, starts[index] ?? section.text.length);
      const parsed = parseYaml(this.#lines, entry);
      const trouble = 'root' in parsed ? { why: 'outside-log' as const, offset: 0 } : parsed.trouble;
      this.#unreadable('unreadable-lines', entry, { trouble });
    }
  }

  #list(section: Slice, lines: Line[], name: string, holds: 'entries' | 'records'): readonly [Text, List] {
    const head = lines.findIndex(({ body }) => body !== '');
    const line = lines[head] as Line;
    const keyAt = line.from + line.indent;
    const key = new Text(name, this.#lines.place(section.base + keyAt, section.base + keyAt + name.length));
    const first = lines.findIndex(({ body }) => isItem(body));
    const { indent } = lines[first] as Line;
    const starts = lines.filter(
      ({ body, indent: own }) =>
        isItem(body) && (own === indent || (holds === 'entries' && ENTRY_START.test(body))),
    );
    const stray = lines.slice(head + 1, first).some(({ body }) => body !== '');
    if (stray || !/^[ \t]*(?:#|$)/.test(line.body.replace(KEY, ''))) {
      this.#unreadable('unreadable-lines', part(section, line.from, (starts[0] as Line).from), null);
    }
    const items = this.#itemsAt(
      section,
      starts.map(({ from }) => from),
      holds,
    );
    return [key, new List(items, key.at)];
  }

  #itemsAt(slice: Slice, starts: readonly number[], holds: 'entries' | 'records'): Node[] {
    return starts.flatMap((from, index) =>
      this.#item(part(slice, from, starts[index + 1] ?? slice.text.length), holds),
    );
  }

  #item(item: Slice, holds: 'entries' | 'records'): readonly Node[] {
    const parsed = parseYaml(this.#lines, item);
    if ('root' in parsed && parsed.root instanceof List) {
      append(this.findings, parsed.findings);
      return parsed.root.items;
    }
    const code = holds === 'records' ? 'unreadable-lines' : 'unreadable-entry';
    if (holds === 'records' && !/^[ \t]*-[ \t]*\{/.test(item.text)) {
      const record = this.fields({ ...item, text: item.text.replace('-', ' ') });
      // Nothing of it could be read, which was told: what it lacks is not to be asked for.
      return record.pairs.length === 0 ? [] : [record];
    }
    if (!DASH.test(item.text)) {
      this.#noEntries(item);
      return [];
    }
    const hopeless = 'trouble' in parsed && parsed.trouble.why === 'too-long';
    const read = hopeless
      ? null
      : (this.#withRawNote(item) ?? this.#withoutTab(item) ?? this.#firstLine(item));
    if (read !== null) return read;
    this.#unreadable(code, item, this.#withBraces(item) ?? parsed);
    return [];
  }

  #withRawNote(item: Slice): readonly Node[] | null {
    const span = rawNote(item.text);
    if (span === null) return null;
    const is = unquotedNote(this.#lines, item.base + span.from, item.base + span.to);
    const note = { from: span.from, is };
    const items = this.#items({ ...item, text: maskNote(item.text, span), note });
    if (items !== null) this.findings.push(is.hint);
    return items;
  }

  /** A tab before the dash does no harm where the entry needs none behind it; it is said once a file. */
  #withoutTab(item: Slice): readonly Node[] | null {
    const margin = item.text.search(/[^ \t]/);
    const tab = item.text.slice(0, margin).indexOf('\t');
    if (tab < 0) return null;
    const items = this.#items({ ...item, text: ' '.repeat(margin) + item.text.slice(margin) });
    if (items !== null && !this.#tabs) {
      this.#tabs = true;
      this.findings.push({
        code: 'tab-indent',
        at: this.#lines.place(item.base + tab),
        args: {},
      });
    }
    return items;
  }

  /** A line of keys and commas that would be an entry if it had its braces. */
  #withBraces(item: Slice): { trouble: Trouble } | null {
    const said = item.text.trim();
    if (!/^-[ \t]+date[ \t]*:/.test(said) || said.includes('\n')) return null;
    const parsed = parseYaml(this.#lines, { text: `{${said.slice(1)}}`, base: item.base });
    if (!('root' in parsed) || !(parsed.root instanceof Fields) || parsed.findings.length > 0) return null;
    return { trouble: { why: 'no-braces', offset: 0, line: lineOf(parsed.root) } };
  }

  /** Something that is no entry stands behind one: the entry counts, the rest is the finding. */
  #firstLine(item: Slice): readonly Node[] | null {
    if (!/^[ \t]*-[ \t]+\{/.test(item.text)) return null;
    const end = item.text.indexOf('\n') + 1;
    const first = part(item, 0, end);
    const items = this.#items(first) ?? this.#withRawNote(first);
    if (items === null) return null;
    this.#noEntries(part(item, end, item.text.length));
    return items;
  }

  /** Lines that are no entries, each that was meant as one by itself. */
  #noEntries(slice: Slice): void {
    const lines = linesOf(slice.text).filter(({ body }) => body !== '');
    const starts = lines
      .filter(({ body }, index) => index === 0 || ENTRY_LIKE.test(body))
      .map(({ from }) => from);
    for (const [index, from] of starts.entries())
      this.#unreadable('unreadable-lines', part(slice, from, starts[index + 1] ?? slice.text.length), null);
  }

  #items(slice: Slice): readonly Node[] | null {
    const parsed = parseYaml(this.#lines, slice);
    if (!('root' in parsed && parsed.root instanceof List)) return null;
    append(this.findings, parsed.findings);
    return parsed.root.items;
  }

  #unreadable(code: 'unreadable-entry' | 'unreadable-lines', slice: Slice, parsed: Parsed | null): void {
    const known = parsed !== null && 'trouble' in parsed;
    const { why, offset, line = null } = known ? parsed.trouble : notAnEntry(slice.text);
    const first = Math.max(0, slice.text.search(/\S/));
    const last = slice.text.trimEnd().length;
    const from = slice.base + Math.min(Math.max(offset, first), Math.max(first, last - 1));
    this.findings.push({
      code,
      at: this.#lines.place(from, known ? from : slice.base + last),
      args: {
        why,
        line: line ?? (AS_IT_STANDS.includes(why) ? '' : mendedLine(slice.text)),
        file: this.#lines.file,
      },
    });
  }
}

/** The key with which lines begin, empty where they begin with none, and what stands behind it. */
function keyOf(lines: readonly Line[]): [name: string, behind: string] {
  const head = lines.find(({ body }) => body !== '')?.body ?? '';
  return [KEY.exec(head)?.[2] ?? '', head.replace(KEY, '')];
}

function part(slice: Slice, from: number, to: number): Slice {
  return { text: slice.text.slice(from, to), base: slice.base + from };
}

function linesOf(text: string): Line[] {
  const lines: Line[] = [];
  for (let from = 0; from < text.length; ) {
    const newline = text.indexOf('\n', from);
    const to = newline < 0 ? text.length : newline + 1;
    const line = text.slice(from, to);
    const indent = Math.max(0, line.search(/[^ \t]/));
    const body = line.slice(indent).trimEnd();
    lines.push({ from, to, indent, body: body.startsWith('#') ? '' : body });
    from = to;
  }
  return lines;
}

/**
 * A section begins with a key at the margin; inside a list only with one, so that a broken note stays with its entry.
 * What stands before the first key is a section of its own, or the key would become unreadable with it.
 */
function sectionsOf(slice: Slice): Slice[] {
  const lines = linesOf(slice.text);
  const first = lines.find(({ body }) => body !== '');
  const margin = first?.indent ?? 0;
  const starts: number[] = [];
  let inList = false;
  for (const { from, indent, body } of lines) {
    if (body === '') continue;
    if (isItem(body)) inList = true;
    const isKey = KEY.test(body);
    if (indent > margin || isItem(body) || (inList && !isKey)) continue;
    inList = false;
    starts.push(from);
  }
  if (starts[0] === first?.from) starts[0] = 0;
  else if (starts[0] !== undefined) starts.unshift(0);
  return starts.map((from, index) => part(slice, from, starts[index + 1] ?? slice.text.length));
}
