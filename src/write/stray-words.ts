import { type Day, formatDay } from '../days.ts';
import { countIn } from '../findings/as-written.ts';
import { nearest } from '../findings/nearest.ts';
import { dateMeant } from '../journal/grammar/date-text.ts';
import { parseTime } from '../journal/grammar/time-text.ts';
import { calledSo } from '../journal/grammar/vocabulary.ts';
import { Fields, NOWHERE, Text } from '../journal/nodes.ts';
import type { VisitGrammar } from '../journal/read/visit.ts';
import { keyMeant } from './key-meant.ts';
import { terminalWords } from './pasted.ts';

/** What was typed, and by what it is judged. */
interface Said {
  words: readonly string[];
  day: Day;
  note: string | null;
  grammar: VisitGrammar;
}

/** Words of an entry that begin so are meant as its day. */
const A_DAY = /^(?:\d|yesterday$|today$|tomorrow$)/i;

/** A value that is a count or a list of eggs and chicks, and what stands behind it: another word, mostly. */
const AND_MORE = /^([\w-]+(?:\.[^=\s]+)?=(?:\d+|[ec]\d+|all|some))[\s,;]+([a-z].*)$/is;

/**
 * What is wrong with a word that is no key with a value, as a sentence that says how to write it: mostly it is the rest of
 * the one before it, as a shell parts words at blanks; or a date, or a line as in a journal. Null where nothing is.
 */
export function strayWord(index: number, said: Said): string | null {
  const { words, grammar } = said;
  const word = words[index] as string;
  const wrong =
    isDate(said, word) ??
    isTime(word) ??
    asInJournal(said, word) ??
    severalInOne(word, grammar) ??
    countBehind(words[index - 1] ?? '', word, grammar) ??
    partBehind(words[index - 1] ?? '', word, grammar);
  if (wrong !== null) return wrong;
  if (/^=/.test(word) && index > 0) return noBlanks(words[index - 1] ?? '', word, words[index + 1]);
  if (word.includes('=') || isKey(word, grammar)) return null;
  if (index === 0 && word.includes('.')) return null;
  return index === 0 ? noObservation(said, word) : restOfValue(words, index, grammar);
}

function isDate({ day }: Said, word: string): string | null {
  const [, dated] = /^date=(.*)$/is.exec(word) ?? [];
  const said = dated ?? word;
  const date = A_DAY.test(said) ? dateMeant(said, day) : '';
  if (dated === undefined && date === '') return null;
  return `the day is given by --date${date === '' ? '' : ` ${date}`}`;
}

function isTime(word: string): string | null {
  return parseTime(word) === null ? null : `the time of day is given by time=${word}`;
}

/** A line of a journal that was pasted, whole or parted by the shell; `laid: 1`; or a value in braces. */
function asInJournal({ words, day, grammar }: Said, word: string): string | null {
  const [, key = '', behind = ''] = /^([\w-]+):(.*)$/s.exec(word) ?? [];
  const isLine = /^-?\s*[{[]|^date:/i.test(word) || word === '-' || keyMeant(key, grammar) !== null;
  if (!isLine && !/^[\w-]+=\s*\{/.test(word)) return null;
  const spoken = terminalWords(words.join(' '), grammar) ?? terminalWords(word, grammar);
  if (spoken !== null) return `at the terminal it is \`${spoken}\``;
  if (key !== '' && keyMeant(key, grammar) !== null)
    return `at the terminal it is \`${key}=${behind.trim() || '…'}\``;
  return `a journal’s line is written otherwise at the terminal: laid=1 candled.fertile=e1,e3 --date ${formatDay(day)}`;
}

function severalInOne(word: string, grammar: VisitGrammar): string | null {
  const [, first = '', rest] = AND_MORE.exec(word) ?? [];
  if (rest === undefined) return null;
  const [, place] = /^([\w-]+)\./.exec(first) ?? [];
  const parts = rest
    .split(/[\s,;]+/)
    .filter((part) => part.toLowerCase() !== 'and')
    .map((part) => {
      if (keyMeant(part.replace(/[.=].*/s, ''), grammar) !== null) return part;
      return place !== undefined && part.includes('=') ? `${place}.${part}` : null;
    });
  if (parts.includes(null)) return null;
  return `each thing that was seen is a word of its own: \`${[first, ...parts].join(' ')}\``;
}

/** `laid one`: what the shell parted stands together as a key and its value. */
function countBehind(before: string, word: string, grammar: VisitGrammar): string | null {
  const key = keyMeant(before, grammar);
  const count = key === null ? null : countIn(word);
  return key === null || count === null ? null : keyAndValue(word, `${key}=${count}`);
}

function keyAndValue(word: string, meant: string): string {
  return `\`${word}\` stands alone; what was seen and how much of it are one word: \`${meant}\``;
}

/** `lost broken`: what of it was seen stands behind its key with a point between, and then how many, or which. */
function partBehind(before: string, word: string, grammar: VisitGrammar): string | null {
  const { observations } = grammar;
  const key = keyMeant(before, grammar) ?? '';
  const definition = Object.hasOwn(observations, key) ? observations[key] : undefined;
  if (definition === undefined || keyMeant(word, grammar) !== null) return null;
  const takes = ['all', '1'].some((value) => {
    const part = new Fields([[new Text(word, NOWHERE), new Text(value, NOWHERE)]], NOWHERE);
    return definition.value.safeParse(part).success;
  });
  return takes
    ? `\`${word}\` stands alone; it is one word with its key and what is said of it: \`${key}.${word}=…\``
    : null;
}

/** The first word: mostly one of the note, of which the shell took only one. */
function noObservation({ words, note }: Said, word: string): string {
  const more =
    note === null
      ? 'write it as laid=1, candled.fertile=e1,e3 or paired'
      : `a note of several words stands in quotes: --note "${[note, ...words].join(' ')}"`;
  return `\`${word}\` is no observation; ${more}`;
}

function noBlanks(before: string, word: string, after: string | undefined): string {
  const value = word === '=' ? (after ?? '…') : word.slice(1);
  return `\`=\` has no blanks around it: \`${before}=${value}\``;
}

function restOfValue(words: readonly string[], index: number, grammar: VisitGrammar): string | null {
  const [before, word] = [words[index - 1] as string, words[index] as string];
  const alone = `\`${word}\` stands alone`;
  const key = keyMeant(before, grammar);
  if (key !== null) return keyAndValue(word, `${key}=${word}`);
  if (!before.includes('=')) return null;
  if (before.endsWith('=')) return noBlanks(before.slice(0, -1), '=', word);
  if (/[=,]\s*\[?[ec]\d+,?$/.test(before) && /^[ec]\d+\]?$/.test(word))
    return `${alone}; a list has commas and no blanks: \`${before.replace(/,$/, '')},${word}\``;
  const next = words.findIndex((one, at) => at > index && one.includes('='));
  const whole = words.slice(index - 1, next < 0 ? undefined : next).join(' ');
  return `${alone}; a value with blanks stands in quotes: "${whole.replace(/["“-‟«»]/g, '')}"`;
}

/** Whether a word is a key, or seems meant as one: then the reader of the journal has the better answer. */
function isKey(said: string, { observations, circumstances, elsewhere }: VisitGrammar): boolean {
  const keys = [
    ...circumstances,
    ...Object.keys(observations),
    ...Object.keys(elsewhere?.observations ?? {}),
  ];
  return nearest(said, keys) !== null || calledSo(said, observations).length > 0;
}
