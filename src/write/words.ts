import { type Day, formatDay } from '../days.ts';
import { grouped } from '../grouped.ts';
import { Empty, Fields, List, NOWHERE, type Node, Text } from '../journal/nodes.ts';
import type { VisitGrammar } from '../journal/read/visit.ts';
import { keyMeant } from './key-meant.ts';
import { strayWord } from './stray-words.ts';

/** What an entry is made of besides its words. */
interface Frame {
  day: Day;
  /** Null where none was given. */
  note: string | null;
  /** What the entries of the log may say: it tells text with a comma from a list. */
  grammar: VisitGrammar;
}

/** An entry, or a sentence on what is wrong with the words that were to make it. */
export type Spoken = { entry: Fields } | { wrong: string };

/** `candled.fertile=e1,e3`: a key, what of it, and what was seen. */
const WORD = /^([^.=\s]+)\s?(?:\.([^=]+))?(?:=([\s\S]*))?$/;

interface Word {
  key: string;
  /** The key inside the value's braces, or null. */
  part: string | null;
  /** Null where the word is a key alone. */
  value: string | null;
}

/**
 * Makes an entry of words such as `laid=1`, `candled.fertile=e1,e3`, `note=two at noon` and `paired`. What a value may be
 * is left to the reader of the journal; only what cannot become an entry at all is wrong here.
 *
 * @example entryOfWords(['laid=1', 'sitting'], frame) // {date: 2026-03-04, laid: 1, sitting}
 */
export function entryOfWords(words: readonly string[], { day, note, grammar }: Frame): Spoken {
  const read: Word[] = [];
  for (const [index, text] of words.entries()) {
    const wrong = strayWord(index, { words, day, note, grammar });
    const word = wrong ?? wordOf(text, grammar);
    if (typeof word === 'string') return { wrong: word };
    read.push(word);
  }
  if (note !== null) read.push({ key: 'note', part: null, value: note.trim() });
  if (read.some(({ key, value }) => key === 'note' && (value ?? '') === ''))
    return { wrong: 'the note is empty: note="two at noon"' };
  const pairs: (readonly [Text, Node])[] = [[text('date'), text(formatDay(day))]];
  for (const [key, ofKey] of grouped(read, (word) => word.key)) {
    const wrong = clash(key, ofKey);
    if (wrong !== null) return { wrong };
    pairs.push([text(key), saidFor(key, ofKey, grammar)]);
  }
  return { entry: new Fields(inOrder(pairs, grammar), NOWHERE) };
}

function wordOf(said: string, grammar: VisitGrammar): Word | string {
  const [, name, part, value] = WORD.exec(said.trim()) ?? [];
  if (name === undefined)
    return `\`${said}\` is no observation; write it as laid=1, candled.fertile=e1,e3 or paired`;
  const key = keyMeant(name, grammar) ?? name;
  if (part !== undefined && (value ?? '').trim() === '')
    return `\`${key}.${part}\` lacks its value: \`${key}.${part.replace(/\s.*/s, '')}=${/\s(.+)/s.exec(part)?.[1] ?? '…'}\``;
  return { key, part: part?.trim() ?? null, value: value === undefined ? null : unquoted(value.trim()) };
}

/** What a shell did not take away: the quotes of a phone. */
function unquoted(value: string): string {
  return /^[“-‟«»‘’"]([^“-‟«»"]*)[“-‟«»‘’"]$/s.exec(value)?.[1] ?? value;
}

function clash(key: string, words: readonly Word[]): string | null {
  const parts = words.map(({ part }) => part);
  const doubled = parts.find((part, index) => parts.indexOf(part) !== index);
  if (doubled === undefined && (words.length === 1 || !parts.includes(null))) return null;
  if (key === 'note') return 'an entry has one note: put both into it';
  const name = doubled === undefined || doubled === null ? key : `${key}.${doubled}`;
  return `\`${name}\` is said twice; several of one kind stand behind one sign, with commas between: ${name}=e1,e2`;
}

/** Lists where the grammar takes them; words where a comma is a comma. */
function saidFor(
  key: string,
  words: readonly [Word, ...Word[]],
  { observations, circumstances }: VisitGrammar,
): Node {
  const listed = nodeOf(words, true);
  if ((circumstances as readonly string[]).includes(key)) return nodeOf(words, false);
  const definition = Object.hasOwn(observations, key) ? observations[key] : undefined;
  if (definition === undefined || definition.value.safeParse(listed).success) return listed;
  return nodeOf(words, false);
}

function nodeOf(words: readonly [Word, ...Word[]], listed: boolean): Node {
  const [{ part, value }] = words;
  if (part === null) return scalarOrList(value, listed);
  return new Fields(
    words.map((word) => [text(word.part as string), scalarOrList(word.value, listed)]),
    NOWHERE,
  );
}

function scalarOrList(value: string | null, listed: boolean): Node {
  if (value === null || value === '') return new Empty(NOWHERE);
  const [, inside] = /^\[(.*)\]$/s.exec(value) ?? [];
  if (!listed || (inside === undefined && !value.includes(','))) return text(value);
  const items = (inside ?? value)
    .split(',')
    .map((item) => item.trim())
    .filter((item) => item !== '');
  // A comma at the end is one of the keeper's own sentence.
  if (inside === undefined && items.length === 1) return text(items[0] as string);
  return new List(
    items.map((item) => text(item)),
    NOWHERE,
  );
}

/** Date and circumstances first, then what was seen, in the order in which it was said; the note's place is the printer's. */
function inOrder(
  pairs: readonly (readonly [Text, Node])[],
  { circumstances }: VisitGrammar,
): (readonly [Text, Node])[] {
  const order = ['date', ...circumstances];
  const rank = ({ text: key }: Text) => (order.includes(key) ? order.indexOf(key) : order.length);
  return [...pairs].sort(([a], [b]) => rank(a) - rank(b));
}

function text(said: string): Text {
  return new Text(said, NOWHERE);
}
