import * as z from 'zod';
import { observation } from '../grammar/observation.ts';
import { empty, word } from '../grammar/values.ts';
import { goneWays } from '../observations/gone.ts';

export const gone = observation({
  value: z.union([empty, word(...goneWays)]),
  order: 170,
  look: false,
  example: 'gone: lent',
  takes: 'nothing, or sold, given, swapped, lent or escaped',
  alsoSaid: [...goneWays, 'given away', 'rehomed', 'left'],
  doc: 'left the stock',
});
