import * as z from 'zod';
import { observation } from '../grammar/observation.ts';
import { map, word } from '../grammar/values.ts';
import { who } from '../grammar/who.ts';

export const gone = observation({
  value: z.union([
    who.transform((whom) => [{ how: null, who: whom }]),
    map(word('sold', 'given', 'swapped', 'lent', 'escaped'), who).transform((pairs) =>
      pairs.map(([how, whom]) => ({ how, who: whom })),
    ),
  ]),
  order: 170,
  look: false,
  example: 'gone: {sold: [c1, c2]}',
  takes: '{sold, given, swapped, lent, escaped: who}, or who',
  alsoSaid: ['sold', 'given', 'given away', 'swapped', 'lent', 'escaped', 'rehomed', 'lost bird', 'left'],
  doc: 'left the stock',
});
