import { observation } from '../grammar/observation.ts';
import { sexes } from '../grammar/sexes.ts';
import { wordOf } from '../grammar/values.ts';

export const sexed = observation({
  value: wordOf(sexes),
  order: 158,
  look: false,
  example: 'sexed: hen',
  takes: 'cock or hen',
  alsoSaid: ['sex', 'gender'],
  doc: 'sex known',
});
