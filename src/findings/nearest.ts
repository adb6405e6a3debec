import leven from 'leven';

/** Longer words than this were not meant to be one of ours. */
const LONGEST = 40;

/**
 * The word that was probably meant, or null where nothing is near. Capitals, blanks, hyphens and underscores make no
 * difference; beyond that one letter in three may be wrong. Where nothing is as near as that, the one word that begins
 * with what was said: `dead` for `dead-in-shell`.
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
  return best ?? begunWith(wanted, words);
}

function begunWith(wanted: string, words: Iterable<string>): string | null {
  const [only, ...others] = [...words].filter((word) => plain(word).startsWith(`${wanted}-`));
  return only === undefined || others.length > 0 ? null : only;
}

function plain(word: string): string {
  return word.toLowerCase().replace(/[\s_-]+/g, '-');
}
