import { observation } from '../grammar/observation.ts';
import { oneOrMore, text } from '../grammar/values.ts';

export const done = observation({
  value: oneOrMore(text),
  order: 200,
  look: false,
  example: 'done: calcium',
  takes: "a routine's name, or list of them",
  alsoSaid: ['task', 'tasks'],
  doc: 'carried out',
});
