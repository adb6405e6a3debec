import { observation } from '../grammar/observation.ts';
import { sexes } from '../grammar/sexes.ts';
import { map, wordOf } from '../grammar/values.ts';
import { who } from '../grammar/who.ts';

export const sexed = observation({
  value: map(wordOf(sexes), who).transform((pairs) => pairs.map(([sex, whom]) => ({ sex, who: whom }))),
  order: 158,
  look: false,
  example: 'sexed: {cock: [c1, c2], hen: c3}',
  takes: '{cock, hen: who}',
  alsoSaid: ['gender', 'cocks', 'hens'],
  doc: 'sex known',
});
