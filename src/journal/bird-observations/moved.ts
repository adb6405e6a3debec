import { housing } from '../grammar/names.ts';
import { observation } from '../grammar/observation.ts';

export const moved = observation({
  value: housing,
  order: 159,
  look: false,
  example: 'moved: flight 3',
  takes: 'the housing',
  alsoSaid: ['housing', 'housed', 'transferred', 'caged'],
  doc: 'to another cage, flight or aviary',
});
