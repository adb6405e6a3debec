import { observation } from '../grammar/observation.ts';
import { eggSize } from '../grammar/size.ts';
import { map } from '../grammar/values.ts';
import { ref } from '../grammar/who.ts';

export const measured = observation({
  value: map(ref, eggSize).transform((pairs) => pairs.map(([egg, size]) => ({ egg, ...size }))),
  order: 135,
  look: false,
  example: 'measured: {e1: 14.2 x 10.8}',
  takes: '{egg: LENGTH x BREADTH}',
  alsoSaid: ['size', 'egg size', 'length'],
  doc: 'length and breadth of eggs, in millimetres',
});
