import type { Finding, Place } from '../findings/finding.ts';

/**
 * What a journal's YAML says, as located text: every scalar is still text and every value knows its place.
 * Grammar schemas are written against these classes, so that no value ever loses its line and column.
 */
export type Node = Text | Empty | List | Fields | Refused;

/** Of what is made by the program and stands in no file. */
export const NOWHERE: Place = { file: '', line: 1, column: 1, length: 1 };

/** A scalar as it was typed, without its quotes. Ring `014` is `014`, `no` is `no`. */
export class Text {
  readonly text: string;
  readonly at: Place;
  constructor(text: string, at: Place) {
    this.text = text;
    this.at = at;
  }
}

/** A note that ran on because it had no quotes. */
export class UnquotedNote extends Text {
  /** Says so; whoever knows the grammar makes it an error where the note swallowed more than words. */
  readonly hint: Finding;
  /** What stands before and behind it on its line. */
  readonly before: string;
  readonly behind: string;
  constructor(text: string, at: Place, around: { before: string; behind: string }) {
    super(text, at);
    this.before = around.before;
    this.behind = around.behind;
    const line = `${this.before}${JSON.stringify(text)}${this.behind}`.trim();
    this.hint = { code: 'unquoted-note', at, args: { line } };
  }
}

/** No value at all, as in `paired:` or the `paired` of a flow map. */
export class Empty {
  readonly at: Place;
  constructor(at: Place) {
    this.at = at;
  }
}

/** A sequence. */
export class List {
  readonly items: readonly Node[];
  readonly at: Place;
  constructor(items: readonly Node[], at: Place) {
    this.items = items;
    this.at = at;
  }
}

/** How a mapping is written: on one line with braces, or a key a line. */
export type Style = 'flow' | 'block';

/** A mapping, in the order in which it stands; keys keep their places as well. */
export class Fields {
  readonly pairs: readonly (readonly [key: Text, value: Node])[];
  readonly at: Place;
  readonly style: Style;
  constructor(pairs: readonly (readonly [Text, Node])[], at: Place, style: Style = 'flow') {
    this.pairs = pairs;
    this.at = at;
    this.style = style;
  }
}

/** A value that journals do not use, an alias for one. Its finding has been made; no schema accepts it. */
export class Refused {
  /** Tells the type apart from those that have a place and nothing else. */
  readonly refused = true;
  readonly at: Place;
  constructor(at: Place) {
    this.at = at;
  }
}

/** Whether something refused hides in the value, so that it says less than what the keeper wrote. */
export function holdsRefused(node: Node): boolean {
  if (node instanceof Refused) return true;
  if (node instanceof List) return node.items.some(holdsRefused);
  return node instanceof Fields && node.pairs.some(([, value]) => holdsRefused(value));
}
