import { nameOfFile } from '../file-names.ts';
import type { Finding, Place } from '../findings/finding.ts';
import { ownProfile } from '../species/find.ts';
import { idFor } from '../species/names.ts';
import type { Profile } from '../species/profile.ts';
import { shippedProfile } from '../species/shipped.ts';
import { traits } from '../species/traits.ts';
import { fieldNames } from '../species/value.ts';
import { probablyMeant, type Vocabulary } from './grammar/vocabulary.ts';
import { Empty, Fields, List, type Node, Refused, Text } from './nodes.ts';
import { asOurs } from './read/spelling.ts';

const keys: Vocabulary = {
  species: { alsoSaid: ['name', 'common name'] },
  scientific: { alsoSaid: ['scientific name', 'latin', 'latin name'] },
  also: { alsoSaid: ['synonyms', 'other names', 'also called'] },
  ...Object.fromEntries(Object.values(traits).map(({ name, alsoSaid = [] }) => [name, { alsoSaid }])),
};

/** What the long form of a value may say. */
const longForm: Vocabulary = Object.fromEntries(fieldNames.map((name) => [name, {}]));

/** Reads a keeper's own species file; every mistake is a finding at its place, and the rest of the profile counts. */
export function readOwnSpecies(file: string, written: Fields, findings: Finding[]): Profile {
  const root = spelledOut(written, findings);
  const id = nameOfFile(file);
  const { profile, problems } = ownProfile(dataOf(root), id);
  for (const { path, code, args } of problems) {
    const [key = ''] = path;
    const isSpecies = valueAt(root, key) instanceof Fields && shippedProfile(key) !== null;
    const own = isSpecies ? `species/${idFor(key)}.yaml` : '';
    const suggestion = args.suggestion ?? meantBy(code, args, path.length > 1 ? longForm : keys) ?? '';
    findings.push({
      code,
      at: placeOf(root, path, code === 'profile-unknown-key'),
      args: { ...args, own, suggestion, file },
    });
  }
  return profile;
}

/** The keys spelt as ours are, each once, and several names not as one. */
function spelledOut(written: Fields, findings: Finding[]): Fields {
  const { pairs, at, style } = asOurs(written, keys, findings);
  const seen = new Set<string>();
  const once = pairs.flatMap(([key, value]): Fields['pairs'][number][] => {
    if (seen.has(key.text)) {
      findings.push({ code: 'duplicate-key', at: key.at, args: { key: key.text } });
      return [];
    }
    seen.add(key.text);
    if (key.text === 'also' && value instanceof Text && value.text.includes(',')) {
      findings.push({ code: 'names-together', at: value.at, args: { names: value.text, name: 'also' } });
      return [];
    }
    return [[key, value instanceof Fields ? asOurs(value, longForm, findings) : value]];
  });
  return new Fields(once, at, style);
}

/** The word of ours that was probably meant by a key or a word that is none. */
function meantBy(code: string, { key, text, words }: Finding['args'], known: Vocabulary): string | null {
  if (code === 'profile-unknown-key') return probablyMeant(String(key), known);
  if (code !== 'profile-unknown-word') return null;
  const ours = Object.fromEntries(
    String(words)
      .split(', ')
      .map((word) => [word, {}]),
  );
  return probablyMeant(String(text), ours);
}

/** Plain objects, arrays and strings; keys of any name are only keys. What was refused is as if it had not been said. */
function dataOf(node: Exclude<Node, Refused>): unknown {
  if (node instanceof Text) return node.text;
  if (node instanceof Empty) return null;
  if (node instanceof List)
    return node.items.flatMap((item) => (item instanceof Refused ? [] : [dataOf(item)]));
  const data: Record<string, unknown> = Object.create(null);
  for (const [key, value] of node.pairs) if (!(value instanceof Refused)) data[key.text] = dataOf(value);
  return data;
}

function valueAt({ pairs }: Fields, name: string): Node | undefined {
  return pairs.find(([key]) => key.text === name)?.[1];
}

/** The place of the key or value under the path; where a step is missing, of what stands above it. */
function placeOf(node: Node, [step, ...rest]: readonly string[], wantsKey: boolean): Place {
  const pair = node instanceof Fields ? node.pairs.find(([key]) => key.text === step) : undefined;
  if (pair === undefined) return node.at;
  return rest.length === 0 && wantsKey ? pair[0].at : placeOf(pair[1], rest, wantsKey);
}
