import { observation } from '../grammar/observation.ts';
import { map, word } from '../grammar/values.ts';
import { who } from '../grammar/who.ts';

export const moult = observation({
  value: map(word('started', 'done'), who).transform((pairs) =>
    pairs.map(([what, whom]) => ({ what, who: whom })),
  ),
  order: 156,
  look: false,
  example: 'moult: {started: c1}',
  takes: '{started, done: who}',
  alsoSaid: ['moulting', 'moulted', 'molting', 'molted'],
  doc: 'first or yearly moult',
});
