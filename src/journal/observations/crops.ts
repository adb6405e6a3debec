import { observation } from '../grammar/observation.ts';
import { map, word } from '../grammar/values.ts';
import { who } from '../grammar/who.ts';

export const crops = observation({
  value: map(word('full', 'thin', 'empty'), who).transform((pairs) =>
    pairs.map(([what, whom]) => ({ what, who: whom })),
  ),
  order: 136,
  look: true,
  example: 'crops: {full: [c1, c2], thin: c3}',
  takes: '{full, thin, empty: who}',
  alsoSaid: ['crop check', 'full crop', 'full crops'],
  doc: 'crop check of the young',
});
