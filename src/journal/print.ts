import { Empty, Fields, List, type Node, Refused, Text } from './nodes.ts';

/** Text that means the same without quotes, wherever it stands in a line of braces. */
const PLAIN = /^[\p{L}\p{N}~+.](?:[\p{L}\p{N}~+./_-]|:(?=\p{N})| (?=[\p{L}\p{N}~+.]))*$/u;

/** An entry as one line of a log, the note last and quoted. */
export function lineOf(entry: Fields): string {
  return `- {${noteLast(entry)
    .map(([key, value]) => pairText(key, value))
    .join(', ')}}`;
}

/** An entry as a key a line, for logs that are written so; dash and indent are the caller's. */
export function blockOf(entry: Fields): string[] {
  return noteLast(entry).map(([key, value]) =>
    value instanceof Empty ? `${scalar(key.text)}:` : pairText(key, value),
  );
}

function noteLast({ pairs }: Fields): Fields['pairs'] {
  const isNote = ([key]: Fields['pairs'][number]) => key.text === 'note';
  return [...pairs.filter((pair) => !isNote(pair)), ...pairs.filter(isNote)];
}

/** A key and its value, as they stand in a line of braces. */
export function pairText(key: Text, value: Node): string {
  if (value instanceof Empty) return scalar(key.text);
  if (key.text === 'note' && value instanceof Text) return `note: ${JSON.stringify(value.text)}`;
  return `${scalar(key.text)}: ${flowText(value)}`;
}

/** A value, as it stands in a line of braces. */
export function flowText(node: Node): string {
  if (node instanceof Text) return scalar(node.text);
  if (node instanceof List) return `[${node.items.map(flowText).join(', ')}]`;
  if (node instanceof Fields) return `{${node.pairs.map(([key, value]) => pairText(key, value)).join(', ')}}`;
  return '';
}

/** Text as one scalar of a line of braces, in quotes where it needs them. */
export function scalar(text: string): string {
  return PLAIN.test(text) ? text : JSON.stringify(text);
}

/** Equal for two values that say the same, however they are written and in whatever order their keys stand. */
export function sameText(node: Node): string {
  if (node instanceof Text) return JSON.stringify(node.text);
  if (node instanceof List) return `[${node.items.map(sameText).join()}]`;
  if (node instanceof Fields) {
    return `{${node.pairs
      .map(([key, value]) => `${JSON.stringify(key.text)}:${sameText(value)}`)
      .sort()
      .join()}}`;
  }
  return node instanceof Refused ? '!' : '';
}
