import { observation } from '../grammar/observation.ts';
import { who } from '../grammar/who.ts';

export const pipped = observation({
  value: who,
  order: 80,
  look: true,
  example: 'pipped: e2',
  takes: 'which eggs',
  alsoSaid: ['pip hole', 'star', 'starred'],
  doc: 'a star or hole in the shell: the chick is on its way',
});
