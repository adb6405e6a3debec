import leven from 'leven';

/** Longer words than this were not meant to be one of ours. */
const LONGEST = 40;

/**
 * The word that was probably meant, or null where nothing is near. Capitals, blanks, hyphens and underscores make no
 * difference; beyond that one letter in three may be wrong.
 *
 * @example nearest('candeled', ['candled', 'checked']) // 'candled'
 */
export function nearest(said: string, words: Iterable<string>): string | null {
  if (said.length > LONGEST) return null;
  const wanted = plain(said);
  let best: string | null = null;
  let distance = Math.max(1, Math.floor(wanted.length / 3)) + 1;
  for (const word of words) {
    const away = leven(wanted, plain(word));
    if (away >= distance || away >= word.length) continue;
    best = word;
    distance = away;
  }
  return best;
}

function plain(word: string): string {
  return word.toLowerCase().replace(/[\s_-]+/g, '-');
}
