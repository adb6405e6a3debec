import { observation } from '../grammar/observation.ts';
import { together } from './paired.ts';

export const reunited = observation({
  value: together,
  order: 10,
  look: false,
  example: 'reunited',
  takes: 'nothing, a housing, or {hen: ID} / {cock: ID}',
  alsoSaid: ['back together', 'together again', 'rejoined'],
  doc: 'put together again after they were parted',
});
