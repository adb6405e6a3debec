import { observation } from '../grammar/observation.ts';
import { map, text } from '../grammar/values.ts';
import { whoKey } from '../grammar/who.ts';

export const unwell = observation({
  value: map(whoKey, text).transform((pairs) => pairs.map(([whom, what]) => ({ who: whom, what }))),
  order: 152,
  look: false,
  example: 'unwell: {hen: fluffed and straining}',
  takes: '{who: text}; `all` is parents and young',
  alsoSaid: ['ill', 'sick', 'illness', 'symptoms', 'injured', 'injury'],
  doc: 'fluffed, straining, on the floor, breathing hard',
});
