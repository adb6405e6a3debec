import { observations } from '../../journal/observations/index.ts';
import type { Schema } from './schema.ts';
import { valueSchema } from './value.ts';

/**
 * The keys of an entry as they are typed at a command line, with what they mean: `laid=`, `candled.fertile=`, and
 * `nest=lined` where there are only a few words.
 */
export function entryWords(): { word: string; says: string }[] {
  return Object.entries(observations).flatMap(([key, { value, doc }]) => {
    const words = branchesOf(valueSchema(value)).flatMap((branch) => beginnings(key, branch));
    return [...new Set(words)].map((word) => ({ word, says: doc }));
  });
}

/** The ways in which a value may be written. */
function branchesOf(schema: Schema): Schema[] {
  return (schema.anyOf as Schema[] | undefined)?.flatMap(branchesOf) ?? [schema];
}

function beginnings(key: string, { type, enum: words, properties }: Schema): string[] {
  if (type === 'null') return [key];
  if (words !== undefined) return words.map((word) => `${key}=${word}`);
  if (type !== 'object') return [`${key}=`];
  return properties === undefined ? [`${key}.`] : Object.keys(properties).map((name) => `${key}.${name}=`);
}
