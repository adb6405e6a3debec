import * as z from 'zod';
import { observation } from '../grammar/observation.ts';
import { sexes } from '../grammar/sexes.ts';
import { empty, wordOf } from '../grammar/values.ts';

export const sitting = observation({
  value: z.union([
    empty.transform(() => 'seen' as const),
    wordOf({ hen: sexes.hen, cock: sexes.cock, both: {}, off: {} }),
  ]),
  order: 60,
  look: false,
  example: 'sitting: hen',
  takes: 'nothing, hen, cock, both, or off',
  alsoSaid: ['incubating', 'incubation', 'brooding', 'sat', 'sits', 'on eggs', 'on the eggs'],
  doc: 'seen sitting; off: eggs found cold or nobody on',
});
