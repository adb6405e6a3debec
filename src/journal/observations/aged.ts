import { observation } from '../grammar/observation.ts';
import { map, number } from '../grammar/values.ts';
import { who } from '../grammar/who.ts';

export const aged = observation({
  value: map(number('days'), who).transform((pairs) => pairs.map(([days, whom]) => ({ days, who: whom }))),
  order: 97,
  look: true,
  example: 'aged: {5: [e1, e2]}',
  takes: '{DAYS: who}',
  doc: 'how many days along the eggs are under the lamp, or how old the chicks are, where unknown',
});
