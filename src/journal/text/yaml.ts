import {
  isAlias,
  isMap,
  isScalar,
  type ParsedNode,
  parseDocument,
  type Scalar,
  Schema,
  type YAMLMap,
  type YAMLSeq,
} from 'yaml';
import type { Finding, Place } from '../../findings/finding.ts';
import { Empty, Fields, List, type Node, Refused, Text, UnquotedNote } from '../nodes.ts';
import { LONGEST_LINE } from './line-shapes.ts';
import type { Lines } from './lines.ts';
import { swallowedNote } from './note.ts';
import { type Trouble, troubleOf } from './trouble.ts';

/** A stretch of a file as it is to be parsed, and where in the file it begins. */
export interface Slice {
  text: string;
  base: number;
  /** A note that was masked for the parser, and the offset of the slice at which it stands. */
  note?: { from: number; is: UnquotedNote };
}

export type Parsed = { root: Node | null; findings: Finding[] } | { trouble: Trouble };

/** All scalars are text: made once, as making it takes longer than reading an entry. */
const FAILSAFE = new Schema({ schema: 'failsafe' });

/** The only place that knows the YAML library. Never throws, whatever the text. */
export function parseYaml(lines: Lines, slice: Slice): Parsed {
  const long = longLine(slice.text);
  if (long >= 0) return { trouble: { why: 'too-long', offset: long } };
  try {
    // Keys are compared by the walk: the library's own check takes quadratic time.
    const document = parseDocument(slice.text, {
      schema: FAILSAFE,
      prettyErrors: false,
      uniqueKeys: false,
      logLevel: 'silent',
    });
    const [error] = document.errors;
    if (error !== undefined) return { trouble: troubleOf(error, slice.text) };
    const walk = new Walk(lines, slice);
    return {
      root: document.contents === null ? null : walk.root(document.contents as ParsedNode),
      findings: walk.findings,
    };
  } catch {
    // The library recurses: what is nested deeper than any stack ends here.
    return { trouble: { why: 'too-deep', offset: 0 } };
  }
}

function longLine(text: string): number {
  if (text.length <= LONGEST_LINE) return -1;
  for (let start = 0; start < text.length; ) {
    const end = text.indexOf('\n', start);
    if ((end < 0 ? text.length : end) - start > LONGEST_LINE) return start;
    if (end < 0) return -1;
    start = end + 1;
  }
  return -1;
}

/** A line that begins as an entry does, in a value that runs on over several lines: YAML takes it for words of the value. */
const ENTRY_INSIDE = /\n[ \t]*-[ \t]*\{/;

/** Turns the library's nodes into ours, and makes findings of what journals do not use. */
class Walk {
  readonly findings: Finding[] = [];
  readonly #lines: Lines;
  readonly #slice: Slice;

  constructor(lines: Lines, slice: Slice) {
    this.#lines = lines;
    this.#slice = slice;
  }

  root(node: ParsedNode): Node {
    return this.#node(node, isMap(node));
  }

  #node(node: ParsedNode, outermost = false): Node {
    const feature = featureOf(node);
    if (feature !== null) {
      // An anchor or a tag leaves the value as it was typed; only an alias has none of its own.
      const refused = this.#refuse('yaml-feature', this.#featurePlace(node, feature.sign), {
        feature: feature.name,
      });
      if (isAlias(node)) return refused;
    }
    if (isScalar(node)) return this.#scalar(node as Scalar.Parsed);
    if (isMap(node)) return this.#map(node as YAMLMap.Parsed, outermost);
    const { items, range } = node as YAMLSeq.Parsed;
    return new List(
      items.map((item) => this.#node(item as ParsedNode)),
      this.#place(range[0], range[1]),
    );
  }

  #scalar(node: Scalar.Parsed): Text | Empty {
    const at = this.#place(node.range[0], node.range[1]);
    if (node.type === 'PLAIN' && node.source === '') return new Empty(at);
    const { note, text } = this.#slice;
    const swallowed = /^BLOCK/.test(node.type ?? '')
      ? null
      : ENTRY_INSIDE.exec(text.slice(node.range[0], node.range[1]));
    if (swallowed !== null) {
      const from = node.range[0] + swallowed.index + swallowed[0].length - 1;
      this.findings.push({
        code: 'unreadable-lines',
        at: this.#place(from),
        args: { why: 'outside-log' },
      });
    }
    return note?.from === node.range[0] ? note.is : new Text(String(node.value), at);
  }

  #map(map: YAMLMap.Parsed, outermost: boolean): Fields {
    const at = this.#place(map.range[0], map.range[1]);
    const swallowed = map.flow
      ? swallowedNote(map as unknown as Parameters<typeof swallowedNote>[0], this.#slice.text)
      : null;
    const pairs: (readonly [Text, Node])[] = [];
    const seen = new Set<string>();
    for (const { key, value } of map.items as { key: ParsedNode | null; value: ParsedNode | null }[]) {
      if (key !== null && swallowed?.swallows(key.range[0])) continue;
      const name = key === null ? new Text('', at) : this.#key(key);
      if (name instanceof Refused) {
        pairs.push([new Text('', name.at), name]);
        continue;
      }
      if (name.text === '<<') {
        pairs.push([name, this.#refuse('yaml-feature', name.at, { feature: 'merge key' })]);
      } else if (seen.has(name.text) && !outermost) {
        pairs.push([name, this.#refuse('duplicate-key', name.at, { key: name.text })]);
      } else if (swallowed !== null && value !== null && value.range[0] === swallowed.from) {
        pairs.push([name, this.#note(swallowed)]);
      } else {
        pairs.push([name, this.#value(name, value)]);
      }
      seen.add(name.text);
    }
    return new Fields(pairs, at, map.flow ? 'flow' : 'block');
  }

  #key(key: ParsedNode): Text | Refused {
    const node = this.#node(key);
    if (node instanceof Text || node instanceof Refused) return node;
    return node instanceof Empty ? new Text('', node.at) : this.#refuse('bad-key', node.at, {});
  }

  /** What is empty has no place of its own: findings point at its key. */
  #value(name: Text, value: ParsedNode | null): Node {
    if (value === null) return new Empty(name.at);
    const node = this.#node(value);
    return node instanceof Empty ? new Empty(name.at) : node;
  }

  #note({ from, to }: { from: number; to: number }): Text {
    const note = unquotedNote(this.#lines, this.#slice.base + from, this.#slice.base + to);
    this.findings.push(note.hint);
    return note;
  }

  #refuse(code: 'yaml-feature' | 'duplicate-key' | 'bad-key', at: Place, args: Finding['args']): Refused {
    this.findings.push({ code, at, args });
    return new Refused(at);
  }

  #place(from: number, to = from): Place {
    return this.#lines.place(this.#slice.base + from, this.#slice.base + to);
  }

  /** Anchors and tags stand before what they belong to; a tag may begin with two signs. */
  #featurePlace({ range }: ParsedNode, sign: string): Place {
    const { text } = this.#slice;
    let from = Math.max(0, text.lastIndexOf(sign, range[0]));
    while (sign === '!' && text[from - 1] === '!') from--;
    return this.#place(from, range[1]);
  }
}

function featureOf(node: ParsedNode): { name: string; sign: string } | null {
  if (isAlias(node)) return { name: 'alias', sign: '*' };
  if (node.anchor) return { name: 'anchor', sign: `&${node.anchor}` };
  return node.tag ? { name: 'tag', sign: '!' } : null;
}

/** A note that ran on because it had no quotes; the fix of its hint is the line as it should be. */
export function unquotedNote(lines: Lines, from: number, to: number): UnquotedNote {
  return new UnquotedNote(lines.text.slice(from, to), lines.place(from, to), {
    before: lines.text.slice(lines.lineStart(from), from),
    behind: lines.text.slice(to, lines.lineEnd(to)),
  });
}
