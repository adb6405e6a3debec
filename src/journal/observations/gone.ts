import * as z from 'zod';
import { observation } from '../grammar/observation.ts';
import { map, word } from '../grammar/values.ts';
import { who } from '../grammar/who.ts';

/** Ways in which a bird leaves the stock. */
export const goneWays = ['sold', 'given', 'swapped', 'lent', 'escaped'] as const;

export const gone = observation({
  value: z.union([
    who.transform((whom) => [{ how: null, who: whom }]),
    map(word(...goneWays), who).transform((pairs) => pairs.map(([how, whom]) => ({ how, who: whom }))),
  ]),
  order: 170,
  look: false,
  example: 'gone: {sold: [c1, c2]}',
  takes: `{${goneWays.join(', ')}: who}, or who`,
  alsoSaid: [...goneWays, 'given away', 'rehomed', 'lost bird', 'left'],
  doc: 'left the stock',
});
