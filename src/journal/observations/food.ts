import * as z from 'zod';
import { observation } from '../grammar/observation.ts';
import { map, number, oneOrMore, text } from '../grammar/values.ts';

export const food = observation({
  value: z.union([
    oneOrMore(text).transform((kinds) => kinds.map((kind) => ({ kind, grams: null }))),
    map(text, number('grams a day')).transform((pairs) => pairs.map(([kind, grams]) => ({ kind, grams }))),
  ]),
  order: 200,
  look: false,
  example: 'food: [live food, egg food, sprouted seed]',
  takes: 'list of kinds, or {kind: grams a day}',
  alsoSaid: ['diet', 'live food', 'livefood', 'seed', 'offered food'],
  doc: 'what is offered from now on',
});
