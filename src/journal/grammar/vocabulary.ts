import { nearest, plainWord } from '../../findings/nearest.ts';
import type { KeyDefinition } from './key.ts';

/** The words of ours that can stand at one place: keys of a table, or plain words with what others call them. */
export type Vocabulary<W extends string = string> = Readonly<Record<W, Partial<KeyDefinition>>>;

/** Those words of ours that others call so: mostly none, or one. */
export function calledSo<W extends string>(said: string, vocabulary: Vocabulary<W>): W[] {
  const plain = plainWord(said);
  return wordsOf(vocabulary).filter((word) => vocabulary[word].alsoSaid?.includes(plain));
}

/**
 * The word that was probably meant, or null. What keepers call it comes before what is spelt alike: by its letters
 * `infertile` is nearer to the opposite.
 */
export function probablyMeant(said: string, vocabulary: Vocabulary): string | null {
  return calledSo(said, vocabulary)[0] ?? amidst(said, vocabulary) ?? nearest(said, wordsOf(vocabulary));
}

/** The one word of ours that stands among others: `sold to a friend`. */
function amidst(said: string, vocabulary: Vocabulary): string | null {
  const around: string[] = plainWord(said).match(/[\p{L}\d]+/gu) ?? [];
  if (around.includes('not')) return null;
  const [only, ...others] = wordsOf(vocabulary).filter((word) => around.includes(word));
  return others.length === 0 ? (only ?? null) : null;
}

export function wordsOf<W extends string>(vocabulary: Vocabulary<W>): W[] {
  return Object.keys(vocabulary) as W[];
}
