import type { Finding } from '../findings/finding.ts';
import { ownProfile } from '../species/find.ts';
import type { Profile } from '../species/profile.ts';
import { Empty, Fields, List, type Node, Text } from './nodes.ts';

/** Reads a keeper's own species file; every mistake is a finding at its place, and the rest of the profile counts. */
export function readOwnSpecies(file: string, root: Fields, findings: Finding[]): Profile {
  const id = file.replace(/^.*\//, '').replace(/\.ya?ml$/i, '');
  const { profile, problems } = ownProfile(dataOf(root), id);
  for (const { path, code, args } of problems) findings.push({ code, at: nodeAt(root, path).at, args });
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

/** The value under the path; for the last step that a file does not have, what stands above it. */
function nodeAt(node: Node, path: readonly string[]): Node {
  const [step, ...rest] = path;
  const pair = node instanceof Fields ? node.pairs.find(([key]) => key.text === step) : undefined;
  if (pair === undefined) return node;
  return rest.length === 0 && pair[1] instanceof Empty ? pair[0] : nodeAt(pair[1], rest);
}
