import type { Finding, Place } from '../findings/finding.ts';
import { nearest } from '../findings/nearest.ts';
import { ownProfile } from '../species/find.ts';
import type { Profile } from '../species/profile.ts';
import { traits } from '../species/traits.ts';
import { Empty, Fields, List, type Node, Text } from './nodes.ts';

const KEYS = ['species', 'scientific', 'also', ...Object.values(traits).map(({ name }) => name)];

/** Reads a keeper's own species file; every mistake is a finding at its place, and the rest of the profile counts. */
export function readOwnSpecies(file: string, root: Fields, findings: Finding[]): Profile {
  const id = file.replace(/^.*\//, '').replace(/\.ya?ml$/i, '');
  const { profile, problems } = ownProfile(dataOf(root), id);
  for (const { path, code, args } of problems) {
    const suggestion = code === 'profile-unknown-key' ? (nearest(String(args.key), KEYS) ?? '') : '';
    findings.push({
      code: code === 'profile-not-a-map' ? 'not-a-mapping' : code,
      at: placeOf(root, path, code === 'profile-unknown-key'),
      args: { ...args, suggestion, file },
    });
  }
  return profile;
}

/** Plain objects, arrays and strings; keys of any name are only keys. */
function dataOf(node: Node): unknown {
  if (node instanceof Text) return node.text;
  if (node instanceof Empty) return null;
  if (node instanceof List) return node.items.map(dataOf);
  const data: Record<string, unknown> = Object.create(null);
  if (node instanceof Fields) for (const [key, value] of node.pairs) data[key.text] = dataOf(value);
  return data;
}

/** The place of the key or value under the path; where a step is missing, of what stands above it. */
function placeOf(node: Node, [step, ...rest]: readonly string[], wantsKey: boolean): Place {
  const pair = node instanceof Fields ? node.pairs.find(([key]) => key.text === step) : undefined;
  if (pair === undefined) return node.at;
  return rest.length === 0 && wantsKey ? pair[0].at : placeOf(pair[1], rest, wantsKey);
}
