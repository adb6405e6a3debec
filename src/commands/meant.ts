import { nearest } from '../findings/nearest.ts';

/**
 * What is said to whoever gave a word that there is not: the one that was probably meant, or what else helps.
 *
 * @example meant('clutchs', ['eggs', 'clutches'], '') // 'did you mean `clutches`?'
 */
export function meant(said: string, words: Iterable<string>, otherwise: string): string {
  const near = nearest(said, words);
  return near === null ? otherwise : `did you mean \`${near}\`?`;
}
