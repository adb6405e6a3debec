import { observation } from '../grammar/observation.ts';
import { oneOrMore, text } from '../grammar/values.ts';

export const skip = observation({
  value: oneOrMore(text),
  order: 200,
  look: false,
  example: 'skip: candle',
  takes: 'task name, or list of them',
  alsoSaid: ['ignore', 'not this time'],
  doc: 'not this clutch: the task is moot',
});
