import leven from 'leven';

/** Longer words than this were not meant to be one of ours. */
const LONGEST = 40;

const HALF_A_LETTER = 0.5;

/**
 * The word that was probably meant, or null where nothing is near. Capitals, blanks, hyphens and underscores make no
 * difference; beyond that one letter in three may be wrong. Where nothing is as near as that, the one word that begins
 * with what was said: `dead` for `dead-in-shell`.
 *
 * @example nearest('candeled', ['candled', 'checked']) // 'candled'
 */
export function nearest(said: string, words: Iterable<string>): string | null {
  if (said.length > LONGEST) return null;
  const wanted = plainWord(said);
  let best: string | null = null;
  let distance = Math.max(1, Math.floor(wanted.length / 3)) + 1;
  for (const word of words) {
    const away = distanceOf(wanted, plainWord(word));
    if (away >= distance || away >= word.length) continue;
    best = word;
    distance = away;
  }
  return best ?? begunWith(wanted, words);
}

/**
 * Letters to change, put in or take out. Two neighbours that changed places, a slip of the fingers as common as each of
 * these (Damerau 1964, Communications of the ACM 7:171–176, from memory), are less than one; so is `layed` for `laid`,
 * and another form of the same verb: `hatch` or `hatching` for `hatched`.
 */
function distanceOf(said: string, word: string): number {
  const slips = [...said]
    .slice(1)
    .map((_, i) => said.slice(0, i) + said[i + 1] + said[i] + said.slice(i + 2));
  const alike =
    slips.includes(word) || said.replace(/ayed$/, 'aid') === word || stemOf(said) === stemOf(word);
  return said !== word && alike ? HALF_A_LETTER : leven(said, word);
}

/** What the forms of a verb have in common: `ring` of `ringed`, `pip` of `pipped`, `candl` of `candling`. */
function stemOf(word: string): string {
  return word.replace(/(?<=\w{3})(ed|ing|e)$/, '').replace(/([a-z])\1$/, '$1');
}

function begunWith(wanted: string, words: Iterable<string>): string | null {
  const [only, ...others] = [...words].filter((word) => plainWord(word).startsWith(`${wanted} `));
  return only === undefined || others.length > 0 ? null : only;
}

/** A word in small letters, its parts parted by blanks: capitals, hyphens and underscores make no difference. */
export function plainWord(word: string): string {
  return word
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ')
    .trim();
}
