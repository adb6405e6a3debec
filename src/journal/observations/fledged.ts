import { observation } from '../grammar/observation.ts';
import { who } from '../grammar/who.ts';

export const fledged = observation({
  value: who,
  order: 140,
  look: false,
  example: 'fledged: c1',
  takes: 'how many, or which chicks',
  alsoSaid: ['left nest', 'left the nest', 'flown', 'flew', 'out', 'out of the nest', 'left'],
  doc: 'left the nest',
});
