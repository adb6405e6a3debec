import * as z from 'zod';
import type { Place } from '../../findings/finding.ts';
import { List, Text } from '../nodes.ts';
import { refuse } from './issue.ts';

/** How sure a count is: `2` exactly, `3+` and `some` at least, `~3` about. */
export type Exactness = 'exactly' | 'at least' | 'about';

/** How many, where nobody is named. */
export interface Count {
  kind: 'count';
  count: number;
  exact: Exactness;
  at: Place;
}

/** One named egg, chick or bird, not yet looked up. */
export type Ref = { text: string; at: Place } & (
  | { form: 'egg' | 'chick'; pair: string | null; clutch: number | null; number: number }
  | { form: 'parent'; parent: 'cock' | 'hen' | 'both' }
  | { form: 'ring'; ring: string }
  | { form: 'name'; name: string }
);

/** Whom an observation is about: so many, these, or everyone it is possible for. */
export type Who = Count | { kind: 'refs'; refs: Ref[]; at: Place } | { kind: 'all'; at: Place };

const COUNT = /^(\d+)(\+)?$|^~(\d+)$/;
const YOUNG = /^(?:([^/\s]+)\/)??(?:(\d+)\/)?([ec])([1-9]\d*)$/;

/** Reads one ref: `e1`, `2/c1`, `SF-2/1/c1`, `cock`, `hen`, `both`, `ring:014`, a ring code or an id. */
export function parseRef({ text, at }: Text): Ref {
  if (text === 'cock' || text === 'hen' || text === 'both') return { text, at, form: 'parent', parent: text };
  if (text.startsWith('ring:')) return { text, at, form: 'ring', ring: text.slice(5).trim() };
  const young = YOUNG.exec(text);
  if (young !== null && !(young[1] !== undefined && young[2] === undefined)) {
    return {
      text,
      at,
      form: young[3] === 'e' ? 'egg' : 'chick',
      pair: young[1] ?? null,
      clutch: young[2] === undefined ? null : Number(young[2]),
      number: Number(young[4]),
    };
  }
  return { text, at, form: 'name', name: text };
}

/** Reads a count: digits, `3+`, `~3`, `some`; null when the text is none of these. */
export function parseCount({ text, at }: Text): Count | null {
  if (text === 'some') return { kind: 'count', count: 1, exact: 'at least', at };
  const match = COUNT.exec(text);
  if (match === null) return null;
  const exact = match[3] !== undefined ? 'about' : match[2] !== undefined ? 'at least' : 'exactly';
  return { kind: 'count', count: Number(match[3] ?? match[1]), exact, at };
}

/** More birds than this in one nest is a slip of the finger. */
export const MOST = 40;

function checkedCount(count: Count, zero: boolean, context: z.core.$RefinementCtx): Count {
  if (count.count === 0 && !zero) return refuse(context, count.at, 'zero-count');
  if (count.count > MOST) return refuse(context, count.at, 'absurd-count', { count: count.count });
  return count;
}

const NEGATIVE = /^[-−]\s*\d/;

function parseWho(node: Text | List, zero: boolean, context: z.core.$RefinementCtx): Who {
  if (node instanceof Text) {
    if (node.text === 'all') return { kind: 'all', at: node.at };
    const count = parseCount(node);
    if (count !== null) return checkedCount(count, zero, context);
    if (NEGATIVE.test(node.text)) return refuse(context, node.at, 'negative-count', { text: node.text });
    if (/^\d+[.,]/.test(node.text)) return refuse(context, node.at, 'not-a-who', { text: node.text });
    return { kind: 'refs', refs: [parseRef(node)], at: node.at };
  }
  const names: Text[] = [];
  for (const item of node.items) {
    if (!(item instanceof Text) || parseCount(item) !== null || item.text === 'all') {
      return refuse(context, item.at, 'not-a-ref', { text: item instanceof Text ? item.text : '' });
    }
    names.push(item);
  }
  if (names.length === 0) return refuse(context, node.at, 'empty-list');
  return { kind: 'refs', refs: names.map(parseRef), at: node.at };
}

const WHO_NOTE = 'a count (2, 3+, ~3, some), a ref or list of refs (e1, [c1, c2]), or all';
const whoInput = z.union([z.instanceof(Text), z.instanceof(List)]);
const whoOf = (zero: boolean) => whoInput.transform((node, context) => parseWho(node, zero, context));

/** Whom: a count of at least one, refs, or `all`. */
export const who = whoOf(false).meta({ shape: 'who', least: 1, description: WHO_NOTE });

/** As {@link who}, where none is worth saying: `candled: {fertile: 0, clear: 4}`. */
export const whoOrNone = whoOf(true).meta({
  shape: 'who',
  least: 0,
  description: `${WHO_NOTE}; 0 is allowed`,
});

/** A count that may be 0, exact or not. */
export const count = z
  .instanceof(Text)
  .transform((text, context): Count => {
    const parsed = parseCount(text);
    if (parsed !== null) return checkedCount(parsed, true, context);
    const code = NEGATIVE.test(text.text) ? 'negative-count' : 'not-a-count';
    return refuse(context, text.at, code, { text: text.text });
  })
  .meta({ shape: 'count', description: 'a count: 0, 2, 3+, ~3' });

/** One ref, as a key or a value. */
export const ref = z
  .instanceof(Text)
  .transform((text): Ref => parseRef(text))
  .meta({
    shape: 'ref',
    description: 'one egg, chick or bird: e1, c2, 2/c1, SF-2/1/c1, cock, hen, a ring, an id',
  });

/** Whom, as a key: several names stand in one text, `{"c1, c2": flight 3}`. */
export const whoKey = z
  .instanceof(Text)
  .transform((node, context): Who => parseWho(node.text.includes(',') ? listIn(node) : node, false, context))
  .meta({
    shape: 'who-key',
    description:
      'a count (2, some), a ref (c1, cock, hen, a ring, an id), several in quotes ("c1, c2"), or all',
  });

function listIn({ text, at }: Text): List {
  const names = text.split(',').map((name) => name.trim());
  return new List(
    names.filter((name) => name !== '').map((name) => new Text(name, at)),
    at,
  );
}

/** Just this one, for observations that name one egg or bird at a time. */
export function only(one: Ref): Who {
  return { kind: 'refs', refs: [one], at: one.at };
}
