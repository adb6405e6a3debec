import { observation } from '../grammar/observation.ts';
import { who } from '../grammar/who.ts';

export const laid = observation({
  value: who,
  order: 30,
  look: true,
  example: 'laid: 1',
  takes: 'how many new eggs, or which: e3',
  alsoSaid: ['egg', 'eggs', 'new egg', 'new eggs', 'lay', 'laying', 'clutch size'],
  doc: 'eggs new in the nest',
});
