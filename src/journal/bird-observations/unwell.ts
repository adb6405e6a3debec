import { observation } from '../grammar/observation.ts';
import { text } from '../grammar/values.ts';

export const unwell = observation({
  value: text,
  order: 152,
  look: false,
  example: 'unwell: fluffed on the floor',
  takes: 'text',
  alsoSaid: ['ill', 'sick', 'illness', 'symptoms', 'injured', 'injury'],
  doc: 'fluffed, straining, on the floor, breathing hard',
});
