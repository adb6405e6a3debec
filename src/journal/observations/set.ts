import * as z from 'zod';
import { observation } from '../grammar/observation.ts';
import { map, text } from '../grammar/values.ts';
import { who } from '../grammar/who.ts';

export const setUnder = observation({
  value: z.union([
    who.transform((eggs) => [{ place: null, who: eggs }]),
    map(text, who).transform((pairs) => pairs.map(([place, eggs]) => ({ place, who: eggs }))),
  ]),
  order: 50,
  brings: (value) => value.flatMap(({ place }) => place?.text ?? []),
  look: false,
  example: 'set: all',
  takes: 'which eggs, or where: {PAIR: who}, {incubator: who}',
  alsoSaid: ['incubator', 'set back', 'put back', 'given back'],
  doc: 'stored eggs given to be sat on: here, under another pair, or in an incubator; there also straight from the nest',
});
