import { observation } from '../grammar/observation.ts';
import { text } from '../grammar/values.ts';

export const treated = observation({
  value: text,
  order: 154,
  look: false,
  example: 'treated: as the vet ordered',
  takes: 'text',
  alsoSaid: ['treatment', 'medicated', 'medication', 'medicine', 'vet'],
  doc: 'what the vet ordered',
});
