import * as z from 'zod';
import { observation } from '../grammar/observation.ts';
import { map, word } from '../grammar/values.ts';
import { who } from '../grammar/who.ts';

/** Ways in which an egg ends by itself. */
export const lossCauses = [
  'clear',
  'undeveloped',
  'addled',
  'dead-in-shell',
  'broken',
  'eaten',
  'deserted',
  'chilled',
  'thrown-out',
  'missing',
] as const;

/** Ways in which our own hand ends it: such eggs are in no denominator. */
export const takenCauses = ['removed', 'sold', 'given'] as const;

export const lost = observation({
  value: z.union([
    who.transform((eggs) => [{ cause: null, who: eggs }]),
    map(word(...lossCauses, ...takenCauses), who).transform((pairs) =>
      pairs.map(([cause, eggs]) => ({ cause, who: eggs })),
    ),
  ]),
  order: 110,
  look: true,
  example: 'lost: {clear: e2}',
  takes: `{cause: who}, or who; by itself: ${lossCauses.join(', ')}; by our hand: ${takenCauses.join(', ')}`,
  alsoSaid: ['broken', 'missing eggs', 'eggs lost', 'dead in shell', 'removed', 'thrown out'],
  doc: 'eggs that ended without a chick; those taken by our hand are in no rate',
});
