import { observation } from '../grammar/observation.ts';
import { sexes } from '../grammar/sexes.ts';
import { map, wordOf } from '../grammar/values.ts';
import { who } from '../grammar/who.ts';

export const feeding = observation({
  value: map(wordOf({ ...sexes, hand: {} }), who).transform((pairs) =>
    pairs.map(([what, whom]) => ({ by: what, who: whom })),
  ),
  order: 137,
  look: false,
  example: 'feeding: {cock: all}',
  takes: '{cock, hen, hand: who}',
  alsoSaid: ['fed', 'feeds', 'fed by', 'hand fed', 'hand feeding'],
  doc: 'who feeds which young',
});
