import leven from 'leven';
import { alikeName } from '../findings/alike.ts';
import { comparable, namesOf } from './names.ts';
import { mergeProfiles, type Profile, type ProfileResult, profileFromData } from './profile.ts';
import { shippedNames, shippedProfile } from './shipped.ts';
import { absurd } from './validate.ts';

/** No species has a longer name; comparing letter by letter would take seconds. */
const LONGEST = 80;

/** No species is called less: a file of that name is called by the initials of its species, or of its pairs. */
const WORD = /\p{L}{4}/u;

/**
 * The profile of a species, under whichever of its names: common, scientific, synonym or id. Capitals, accents,
 * spaces and hyphens make no difference. A room's own profiles go before the shipped ones.
 *
 * @example findSpecies('Estrilda caerulescens')?.species // 'lavender waxbill'
 */
export function findSpecies(name: string, own: readonly Profile[] = []): Profile | null {
  const wanted = comparable(name);
  if (wanted === '') return null;
  const mine = own.find((profile) => namesOf(profile).some((known) => comparable(known) === wanted));
  return mine ?? shippedProfile(name);
}

/** The known name nearest to a misspelt one, or null where nothing is near. */
export function suggestSpecies(name: string, own: readonly Profile[] = []): string | null {
  const wanted = comparable(name);
  if (wanted.length > LONGEST) return null;
  let best: { name: string; distance: number } | null = null;
  for (const known of [...own.flatMap(namesOf), ...shippedNames()]) {
    const distance = leven(wanted, comparable(known));
    if (distance < (best?.distance ?? Number.POSITIVE_INFINITY)) best = { name: known, distance };
  }
  const near = Math.max(2, Math.floor(wanted.length / 4));
  if (wanted === '') return null;
  return best !== null && best.distance <= near ? best.name : begunSo(wanted, own);
}

/** The one species a name of which begins with that word: `lavendar` for the lavender waxbill. */
function begunSo(wanted: string, own: readonly Profile[]): string | null {
  const slips = wanted.length > 5 ? 1 : 0;
  const names = [...own.flatMap(namesOf), ...shippedNames()].filter(
    (name) => leven(wanted, comparable(name.split(/\s/, 1)[0] as string)) <= slips,
  );
  const found = new Set(names.map((name) => findSpecies(name, own)?.species));
  return found.size === 1 ? ([...found][0] ?? null) : null;
}

/**
 * A keeper's own profile file, completed from the shipped profile of the same species where there is one.
 *
 * @param data the file as plain objects, arrays and strings
 * @param id the file's name without `.yaml`
 */
export function ownProfile(data: unknown, id: string): ProfileResult {
  const { profile, problems } = profileFromData(data, id);
  const shipped = shippedProfile(profile.species) ?? shippedProfile(profile.scientific) ?? shippedProfile(id);
  if (shipped === null) {
    // What stands wrong is said first: the missing value may be just that.
    const missing = problems.length === 0 && profile.incubation === null;
    const alike = profile.scientific === '' ? alikeName(profile.species, shippedNames()) : null;
    if (alike !== null) {
      const args = { key: 'species', text: profile.species, suggestion: alike };
      problems.push({ path: ['species'], code: 'profile-alike', args });
    }
    if (!isNamed(data) && !WORD.test(id)) {
      const args = { key: 'species', text: id, suggestion: '' };
      problems.push({ path: [], code: 'profile-alike', args });
    }
    return { profile, problems: missing ? [{ path: [], code: 'profile-missing', args: {} }] : problems };
  }
  const merged = mergeProfiles(profile, shipped);
  const again = merged.problems.filter(
    ({ path, code }) => !problems.some((known) => known.code === code && known.path[0] === path[0]),
  );
  // Completed, it may be plain that what seemed doubtful cannot be: said once, as what it is.
  const settled = new Set(merged.problems.filter(absurd).map(({ path }) => path[0]));
  const first = problems.filter(({ code, path }) => code !== 'profile-doubtful' || !settled.has(path[0]));
  return { profile: merged.profile, problems: [...first, ...again] };
}

function isNamed(data: unknown): boolean {
  return typeof data === 'object' && data !== null && ('species' in data || 'scientific' in data);
}
