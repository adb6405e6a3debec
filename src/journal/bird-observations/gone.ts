import * as z from 'zod';
import { observation } from '../grammar/observation.ts';
import { empty, word } from '../grammar/values.ts';

export const gone = observation({
  value: z.union([empty, word('sold', 'given', 'swapped', 'lent', 'escaped')]),
  order: 170,
  look: false,
  example: 'gone: lent',
  takes: 'nothing, or sold, given, swapped, lent or escaped',
  alsoSaid: ['sold', 'given', 'given away', 'swapped', 'lent', 'escaped', 'rehomed', 'left'],
  doc: 'left the stock',
});
