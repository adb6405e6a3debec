import { observation } from '../grammar/observation.ts';
import { map, number } from '../grammar/values.ts';
import { who } from '../grammar/who.ts';
import { checked } from './checked.ts';

const AGED = 97;

export const aged = observation({
  value: map(number('days', 0), who).transform((pairs) => pairs.map(([days, whom]) => ({ days, who: whom }))),
  order: AGED,
  // All, or so many, whose age is told are those that a look of that day counted.
  orderOf: (value) => (value.every(({ who: { kind } }) => kind === 'refs') ? AGED : checked.order + 0.5),
  look: true,
  example: 'aged: {5: [e1, e2]}',
  takes: '{DAYS: who}',
  alsoSaid: ['age', 'days old'],
  doc: 'how many days along the eggs are under the lamp, or how old the chicks are, where unknown',
});
