import * as z from 'zod';
import { observation } from '../grammar/observation.ts';
import { map, word } from '../grammar/values.ts';
import { who } from '../grammar/who.ts';

export const roosting = observation({
  value: z.union([
    word('nest', 'out').transform((where) => [{ where, who: null }]),
    map(word('nest', 'out'), who).transform((pairs) => pairs.map(([where, whom]) => ({ where, who: whom }))),
  ]),
  order: 210,
  look: false,
  example: 'roosting: out',
  takes: 'nest, out, or {nest: who, out: who}',
  alsoSaid: ['asleep', 'sleeping', 'slept', 'at dusk'],
  doc: 'seen at dusk: where the young spend the night that follows',
});
