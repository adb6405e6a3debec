import type * as z from 'zod';
import { Fields, List, NOWHERE, type Node, Text } from '../nodes.ts';
import { parseCount, parseRef } from './who.ts';

type Pairs = Fields['pairs'];

/**
 * The map that was meant by one whose two sides were changed, else null: `candled: {e1: fertile}` for `{fertile: e1}`. It is
 * one if eggs, young or parents are named where something else belongs, and either the grammar takes it the other way only,
 * or nobody of them is named where they belong: a cause and a place are text that could be anything.
 */
export function turnedRound(pairs: Pairs, key: z.ZodType, value: z.ZodType): Fields | null {
  const turned = turn(pairs);
  if (turned === null) return null;
  const [keys, values] = [pairs.map(([name]) => name), turned.map(([name]) => name)];
  // Behind whom it is about, a number is a cage's or a ring's as often as a count.
  const [whom, other, isThem] = isWhom(key)
    ? ([keys, values, isNamed] as const)
    : ([values, keys, isYoungOrParent] as const);
  if (!other.every(isThem) || !takes(turned, key, value)) return null;
  return takes(pairs, key, value) && whom.some(isYoungOrParent) ? null : new Fields(turned, NOWHERE);
}

function takes(pairs: Pairs, key: z.ZodType, value: z.ZodType): boolean {
  return pairs.every(([name, under]) => key.safeParse(name).success && value.safeParse(under).success);
}

/** Each value becomes a key, with all the keys under which it stood; null where a value is more than a text or some. */
function turn(pairs: Pairs): Pairs | null {
  const turned = new Map<string, { name: Text; under: Text[] }>();
  for (const [name, under] of pairs) {
    const values = under instanceof List ? under.items : [under];
    for (const value of values) {
      if (!(value instanceof Text)) return null;
      const known = turned.get(value.text) ?? { name: value, under: [] };
      known.under.push(...name.text.split(',').map((part) => new Text(part.trim(), name.at)));
      turned.set(value.text, known);
    }
  }
  return [...turned.values()].map(({ name, under }): readonly [Text, Node] => {
    const [only, ...more] = under;
    return [name, only !== undefined && more.length === 0 ? only : new List(under, name.at)];
  });
}

/** Whether a side of a map names whom it is about. */
export function isWhom(schema: z.ZodType): boolean {
  return ['who-key', 'ref'].includes(String(schema.meta()?.shape));
}

/** `e1`, `c2`, `hen`, `all`, `2`: never the name of a place, nor a cause. */
export function isYoungOrParent(name: Text): boolean {
  return parseCount(name) !== null || isNamed(name);
}

/** `e1`, `c2`, `hen`, `all`. */
export function isNamed(name: Text): boolean {
  return (
    name.text === 'all' ||
    name.text
      .split(',')
      .every((one) => ['egg', 'chick', 'parent'].includes(parseRef(new Text(one.trim(), name.at)).form))
  );
}
