import { observation } from '../grammar/observation.ts';
import { who } from '../grammar/who.ts';

export const pulled = observation({
  value: who,
  order: 40,
  look: false,
  example: 'pulled: e1',
  takes: 'which eggs',
  alsoSaid: ['collected', 'taken', 'eggs pulled', 'dummies', 'dummy eggs', 'dummy'],
  doc: 'eggs taken into store, dummies in their place',
});
