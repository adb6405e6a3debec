import { observation } from '../grammar/observation.ts';
import { who } from '../grammar/who.ts';

export const hatched = observation({
  value: who,
  order: 90,
  look: true,
  example: 'hatched: 2',
  takes: 'how many, or which eggs',
  alsoSaid: ['born', 'chick', 'chicks', 'young', 'hatchlings', 'babies', 'out of the shell'],
  doc: 'out of the shell',
});
