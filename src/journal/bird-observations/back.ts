import { observation } from '../grammar/observation.ts';
import { empty } from '../grammar/values.ts';

export const back = observation({
  value: empty,
  order: 12,
  look: false,
  example: 'back',
  takes: 'nothing',
  alsoSaid: ['returned', 'came back', 'found'],
  doc: 'found again, or home from loan',
});
