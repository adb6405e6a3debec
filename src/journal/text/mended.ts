import { Fields, List, NOWHERE, Text } from '../nodes.ts';
import { lineOf, pairText } from '../print.ts';
import { Lines } from './lines.ts';
import { parseYaml } from './yaml.ts';

/** Longer lines are not worth printing again, nor trying in a dozen ways. */
const LONGEST = 400;

/** An entry or item between braces, whatever stands in place of its dash. */
const ITEM = /^(?:[-+~>\u2013\u2014\u2212*\u2022][ \t]*)?(?=[{[(])/;
/** A key whose text has a colon of its own. */
const COLON_IN_TEXT = /^(\w[\w -]*):[ \t]+([^\s"'{[|>&*#].*)$/;

/** A date, and no comma before what was seen. */
const DATE_AND_MORE = /^(\{[ \t]*date[ \t]*:[ \t]*\d{4}-\d{2}-\d{2})[.:; \t]+(?=[a-z])/i;

/** What may be wrong with an item's brackets, quotes and commas: each slip mended, the likeliest first. */
const slips: readonly ((item: string) => string)[] = [
  (item) => item,
  (item) => item.replace(/\}[ \t]*[,;.]$/, '}'),
  (item) => item.replace(DATE_AND_MORE, '$1, '),
  (item) => item.replace(', note:', '}, note:'),
  (item) => `${item}}`,
  (item) => `${item}]}`,
  (item) => `${item}}}`,
  (item) => item.replace(/\]?\}$/, ']}'),
  (item) => item.replace(/[}\]]$/, ''),
  (item) => item.replace(/,(?:[ \t]*,)+/g, ','),
  (item) => item.replace(/\}?$/, '"}'),
  (item) => item.replace(/\}[ \t]*(?![ \t}])([^{}]+)$/, (_, words) => `, note: ${quoted(words)}}`),
  (item) => item.replace(/^[[(](.*)[\])]$/, '{$1}'),
  (item) => item.replaceAll(/;[ \t]*/g, ', '),
];

function quoted(words: string): string {
  return JSON.stringify(words.replaceAll('\\"', '"'));
}

/**
 * The line that was meant by one that cannot be read, as far as its dash, brackets, quotes and colons tell; empty where
 * none of these helps, and where there are several lines.
 */
export function mendedLine(text: string): string {
  const all = text.trim();
  if (all.length > LONGEST || all.includes('\n')) return '';
  // In quotes it is no comment.
  const line = /["']/.test(all) ? all : all.replace(/[ \t]#[^\n]*/, '').trimEnd();
  const [dash] = ITEM.exec(line) ?? [];
  if (dash === undefined) return withBraces(line) || withQuotes(line);
  const item = line.slice(dash.length);
  for (const mend of slips) {
    const mended = itemLine(mend(item));
    if (mended !== '') return mended;
  }
  return '';
}

/** An item of a list as it is written here; empty where the text is none. */
function itemLine(item: string): string {
  const list = parsed(`- ${item}`);
  const only = list instanceof List ? list.items[0] : null;
  return only instanceof Fields && only.pairs.every(([key]) => isKey(key)) ? lineOf(only) : '';
}

/** The keys of a bird or a routine on one line: an id or a name has no colon of its own. */
function withBraces(line: string): string {
  const item = line.replace(/^-[ \t]+/, '');
  return /^(?:id|name)[ \t]*:[ \t]/i.test(item) && item.includes(',') ? itemLine(`{${item}}`) : '';
}

function withQuotes(line: string): string {
  const [, key, words] = COLON_IN_TEXT.exec(line) ?? [];
  return key === undefined || !words?.includes(':')
    ? ''
    : pairText(new Text(key, NOWHERE), new Text(words as string, NOWHERE));
}

/** A brace that was mended in the wrong place leaves a sign in a key. */
function isKey({ text }: Text): boolean {
  return /^[\p{L}\p{N}][^{}[\]"]*$/u.test(text);
}

function parsed(text: string) {
  const read = parseYaml(new Lines('', text), { text, base: 0 });
  return 'root' in read && read.findings.length === 0 ? read.root : null;
}
