import { observation } from '../grammar/observation.ts';
import { who } from '../grammar/who.ts';

export const independent = observation({
  value: who,
  order: 150,
  look: false,
  example: 'independent: all',
  takes: 'how many, or which young',
  alsoSaid: ['weaned', 'weaning', 'self feeding', 'feeding itself', 'feeding themselves', 'eating alone'],
  doc: 'cracks seed and no longer begs',
});
