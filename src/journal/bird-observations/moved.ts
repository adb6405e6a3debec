import { observation } from '../grammar/observation.ts';
import { text } from '../grammar/values.ts';

export const moved = observation({
  value: text,
  order: 159,
  look: false,
  example: 'moved: flight 3',
  takes: 'the housing',
  alsoSaid: ['housing', 'housed', 'transferred', 'caged'],
  doc: 'to another cage, flight or aviary',
});
