import * as z from 'zod';
import { observation } from '../grammar/observation.ts';
import { map, wordOf } from '../grammar/values.ts';
import { wordsOf } from '../grammar/vocabulary.ts';
import { who } from '../grammar/who.ts';
import { CLEAR } from './candled.ts';

/** Ways in which an egg ends by itself. */
export const lossCauses = {
  clear: { alsoSaid: CLEAR },
  undeveloped: {},
  addled: { alsoSaid: ['rotten'] },
  'dead-in-shell': { alsoSaid: ['dis'] },
  broken: { alsoSaid: ['cracked'] },
  eaten: {},
  deserted: { alsoSaid: ['abandoned'] },
  chilled: { alsoSaid: ['cold'] },
  'thrown-out': { alsoSaid: ['tossed'] },
  missing: {},
};

/** Ways in which our own hand ends it: such eggs are in no denominator. */
export const takenCauses = { removed: {}, sold: {}, given: {} };

/** Both together. */
export const eggCauses = { ...lossCauses, ...takenCauses };

export const lost = observation({
  value: z.union([
    who.transform((eggs) => [{ cause: null, who: eggs }]),
    map(wordOf(eggCauses), who).transform((pairs) => pairs.map(([cause, eggs]) => ({ cause, who: eggs }))),
  ]),
  order: 110,
  look: true,
  example: 'lost: {clear: e2}',
  takes: `{cause: who}, or who; by itself: ${wordsOf(lossCauses).join(', ')}; by our hand: ${wordsOf(takenCauses).join(', ')}`,
  alsoSaid: ['broken', 'missing eggs', 'eggs lost', 'dead in shell', 'removed', 'thrown out'],
  doc: 'eggs that ended without a chick; those taken by our hand are in no rate',
});
