import { plainWord } from '../findings/nearest.ts';
import type { VisitGrammar } from '../journal/read/visit.ts';

/** The key of a log that a word is, but for capitals; null where it is none. */
export function keyMeant(said: string, { observations, circumstances }: VisitGrammar): string | null {
  const plain = plainWord(said);
  return [...circumstances, ...Object.keys(observations)].find((key) => plainWord(key) === plain) ?? null;
}
