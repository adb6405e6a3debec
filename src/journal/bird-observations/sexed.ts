import { observation } from '../grammar/observation.ts';
import { word } from '../grammar/values.ts';

export const sexed = observation({
  value: word('cock', 'hen'),
  order: 158,
  look: false,
  example: 'sexed: hen',
  takes: 'cock or hen',
  alsoSaid: ['sex', 'gender'],
  doc: 'sex known',
});
