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
const COUNT = new RegExp(`^\\+?(\\d+|${NUMBERS.join('|')})(?: (?:new )?(?:eggs?|chicks?|young))?$`, 'i');
/** `egg 4`, `4th egg`. */
const ONE_OF_THEM = /^(?:(egg|chick) ?(\d+)|(\d+)(?:st|nd|rd|th) (egg|chick))$/i;

/** Longer words were not meant to be a count. */
const LONGEST = 40;

/** The count that some words tell, `one egg` or `+1`; null for any other words. */
export function countIn(words: string): number | null {
  const [, count] = COUNT.exec(plain(words)) ?? [];
  if (count === undefined) return null;
  return NUMBERS.indexOf(count.toLowerCase()) + 1 || Number(count);
}

/** What to do with a count in words, or an egg or chick named by more than its letter; null for any other words. */
export function inFigures(words: FindingArgs[string] | undefined): string | null {
  const said = String(words);
  const count = countIn(said);
  if (count !== null) return `a count is a number alone: ${count}`;
  const [, what, after, before, thing] = ONE_OF_THEM.exec(plain(said)) ?? [];
  const letter = (what ?? thing)?.charAt(0).toLowerCase();
  return letter === undefined ? null : `write \`${letter}${after ?? before}\``;
}

function plain(words: string): string {
  return words.trim().replace(/\s+/g, ' ').slice(0, LONGEST);
}
