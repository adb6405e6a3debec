import { observation } from '../grammar/observation.ts';
import { who } from '../grammar/who.ts';

export const back = observation({
  value: who,
  order: 200,
  look: false,
  example: 'back: c2',
  takes: 'which birds or eggs; a count is of young that fell out or were missing',
  alsoSaid: ['returned', 'came back', 'found'],
  doc: 'found again, put back in the nest, home from loan: reopens lost, missing, fledged or gone',
});
