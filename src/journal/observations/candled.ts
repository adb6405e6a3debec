import { observation } from '../grammar/observation.ts';
import { map, wordOf } from '../grammar/values.ts';
import { whoOrNone } from '../grammar/who.ts';

/** What keepers call a clear egg (common practice, from memory). */
export const CLEAR = [
  'infertile',
  'unfertile',
  'unfertilised',
  'unfertilized',
  'not fertile',
  'sterile',
  'barren',
] as const;

const lampWords = {
  fertile: { alsoSaid: ['full'] },
  clear: { alsoSaid: CLEAR },
  dead: {},
  unsure: {},
};

export const candled = observation({
  value: map(wordOf(lampWords), whoOrNone).transform((pairs) =>
    pairs.map(([what, whom]) => ({ what, who: whom })),
  ),
  order: 70,
  look: true,
  example: 'candled: {fertile: [e1, e3], clear: e2}',
  takes: '{fertile, clear, dead, unsure: who}',
  alsoSaid: ['lamped', 'lamp', 'fertile', 'clear', 'infertile', 'fertility'],
  doc: 'what the lamp showed',
});
