import { nearest } from './nearest.ts';

/** Shorter words are codes more often than they are words: `cage AB` is no slip of `cage AC`. */
const SHORTEST = 4;

/**
 * The name that was probably meant by one that nobody wrote before, or null. Of names that a keeper makes up, most that
 * look alike are two: `flight 2` is no slip of `flight 1`, nor `east flight` of `west flight`. So their numbers must be
 * the same, and each word the same or no more than a slip away.
 *
 * @example alikeName('fligth 2', ['flight 1', 'flight 2']) // 'flight 2'
 */
export function alikeName(said: string, known: Iterable<string>): string | null {
  const wanted = partsOf(said);
  if (wanted.length === 0) return null;
  for (const name of known) {
    if (numbersIn(name) !== numbersIn(said)) continue;
    const parts = partsOf(name);
    if (parts.join('') === wanted.join('')) return name;
    if (parts.length === wanted.length && parts.every((part, i) => isSlip(wanted[i] as string, part)))
      return name;
  }
  return null;
}

/** The numbers in a name: where they are others, it is another. */
export function numbersIn(name: string): string {
  return (name.match(/\d+/g) ?? []).join(' ');
}

/** Its words and numbers, in small letters: what stands between them makes no other name. */
export function partsOf(name: string): string[] {
  return (
    name
      .normalize('NFC')
      .toLowerCase()
      .match(/\p{L}+|\p{N}+/gu) ?? []
  );
}

function isSlip(said: string, meant: string): boolean {
  if (said === meant) return true;
  return Math.min(said.length, meant.length) >= SHORTEST && nearest(said, [meant]) !== null;
}
