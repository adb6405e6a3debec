import * as z from 'zod';
import { Text } from '../nodes.ts';
import { refuse } from './issue.ts';
import type { KeyDefinition } from './key.ts';
import { type Located, oneOrMore, text, yesOrNo } from './values.ts';
import { parseCount, parseRef } from './who.ts';

/** Words of the grammar where a name may stand as well. */
const TAKEN = ['all', 'hand', 'incubator', 'unknown'];

/** What keepers write for a parent that nobody knows. */
const UNKNOWN = /^(?:unknown|[?–-]+)$/i;

/** `LW-1 or LW-2`, `LW-1, LW-2`: one of these. */
const ONE_OF = /,|\sor\s/;

/** The id of a pair or a bird: no stroke, no count, nothing that could be a ref. */
export const ownName = z
  .instanceof(Text)
  .transform((node, context): Located => {
    const name = new Text(node.text.trim(), node.at);
    if (name.text === '') return refuse(context, node.at, 'empty-text');
    const taken = name.text.includes('/') || TAKEN.includes(name.text) || parseCount(name) !== null;
    if (taken || parseRef(name).form !== 'name')
      return refuse(context, node.at, 'bad-name', { text: name.text });
    return { text: name.text, at: name.at };
  })
  .meta({ shape: 'name', description: 'an id without /' });

/** A cage, flight or aviary. */
export const housing = text
  .refine(({ text: name }) => yesOrNo(name) === null)
  .meta({ shape: 'text', description: 'text' });

/** Where a key has its line to itself YAML takes `A, B` for one text, and `A or B` anywhere. */
const parent = text
  .superRefine(({ text: names, at }, context) => {
    const each = names.split(ONE_OF).map((name) => name.trim());
    if (each.length > 1) refuse(context, at, 'names-together', { names, list: each.join(', ') });
  })
  .meta({ shape: 'one-name', description: 'a bird' });

/** One parent, or several where it is one of these; none where it is unknown. */
export const parents = oneOrMore(parent)
  .transform((birds): Located[] => birds.filter(({ text: name }) => !UNKNOWN.test(name)))
  .meta({ shape: 'one-or-more', description: 'a bird, or a list of birds' });

/** Which species a pair or a bird is of. */
export const speciesKey = {
  value: text,
  example: 'species: lavender waxbill',
  takes: 'common name, scientific name or profile id',
  alsoSaid: ['kind', 'kind of bird'],
} as const satisfies KeyDefinition;
