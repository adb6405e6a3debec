import { observation } from '../grammar/observation.ts';
import { number } from '../grammar/values.ts';

export const weighed = observation({
  value: number('grams'),
  order: 130,
  look: false,
  example: 'weighed: 8.4',
  takes: 'grams',
  alsoSaid: ['weight', 'mass'],
  doc: 'weight, in grams',
});
