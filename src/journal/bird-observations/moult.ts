import { observation } from '../grammar/observation.ts';
import { word } from '../grammar/values.ts';

export const moult = observation({
  value: word('started', 'done'),
  order: 156,
  look: false,
  example: 'moult: started',
  takes: 'started or done',
  alsoSaid: ['moulting', 'moulted', 'molting', 'molted'],
  doc: 'first or yearly moult',
});
