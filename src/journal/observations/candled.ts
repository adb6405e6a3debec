import { observation } from '../grammar/observation.ts';
import { map, word } from '../grammar/values.ts';
import { whoOrNone } from '../grammar/who.ts';

export const candled = observation({
  value: map(word('fertile', 'clear', 'dead', 'unsure'), whoOrNone).transform((pairs) =>
    pairs.map(([what, whom]) => ({ what, who: whom })),
  ),
  order: 70,
  look: true,
  example: 'candled: {fertile: [e1, e3], clear: e2}',
  takes: '{fertile, clear, dead, unsure: who}',
  alsoSaid: ['lamped', 'lamp', 'fertile', 'clear', 'infertile', 'fertility'],
  doc: 'what the lamp showed',
});
