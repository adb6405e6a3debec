import type { FindingArgs } from './finding.ts';

const NUMBERS = [
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];

/** `three`, `3 chicks`, `+1`. */
const COUNT = new RegExp(`^\\+?(\\d+|${NUMBERS.join('|')})(?: (?:new )?(?:eggs?|chicks?|young))?$`);
/** `egg 4`, `4th egg`. */
const ONE_OF_THEM = /^(?:(egg|chick) ?(\d+)|(\d+)(?:st|nd|rd|th) (egg|chick))$/;
/** `e1-e3`. */
const FROM_TO = /^([ec])(\d{1,2}) ?(?:-|–|to|…|\.\.) ?\1?(\d{1,2})$/;
/** `All`, `all of them`, `every chick`. */
const ALL = /^(?:all|every|everyone)(?: of)?(?: the| them)?(?: (?:eggs?|chicks?|young))?$/;
/** `Hen`, `the cock`. */
const WORD = /^(?:the )?(cock|hen|both|some)$/;
/** Between the names of `e1 and e2` or `c1+c2`. */
const BETWEEN = /(?: and |[ ,;+&/])+/;
const REF = /^[ec]\d{1,2}$/;
/** No clutch has more. */
const MOST = 20;

/** Longer words were not meant to be a count. */
const LONGEST = 40;

/** The count that some words tell, `one egg` or `+1`; null for any other words. */
export function countIn(words: string): number | null {
  const [, count] = COUNT.exec(plain(words)) ?? [];
  if (count === undefined) return null;
  return NUMBERS.indexOf(count) + 1 || Number(count);
}

/** How a count, `all`, a parent, or eggs or chicks that are named in words, are written here; null for any other words. */
export function asWritten(words: FindingArgs[string] | undefined): string | null {
  const said = plain(String(words));
  const count = countIn(said);
  if (count !== null) return `a count is a number alone: ${count}`;
  const word = ALL.test(said) ? 'all' : WORD.exec(said)?.[1];
  const refs = word === undefined ? refsIn(said) : [word];
  if (refs === null || refs[0] === words) return null;
  return `write \`${refs.length === 1 ? refs[0] : `[${refs.join(', ')}]`}\``;
}

/** The eggs or chicks that some words name, `egg 4`, `E1`, `e1 and e2` or `e1-e3`; null for any other words. */
export function refsIn(words: string): string[] | null {
  const said = plain(words);
  const [, what, after, before, thing] = ONE_OF_THEM.exec(said) ?? [];
  const one = (what ?? thing)?.charAt(0);
  if (one !== undefined) return [`${one}${after ?? before}`];
  const [, letter = '', first, last] = FROM_TO.exec(said) ?? [];
  const [from, to] = [Number(first), Number(last)];
  if (from < to && to - from < MOST)
    return Array.from({ length: to - from + 1 }, (_, i) => `${letter}${from + i}`);
  const refs = said.split(BETWEEN);
  return refs.every((ref) => REF.test(ref)) ? refs : null;
}

function plain(words: string): string {
  return words.trim().toLowerCase().replace(/\s+/g, ' ').slice(0, LONGEST);
}
