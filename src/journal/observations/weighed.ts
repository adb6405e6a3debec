import { observation } from '../grammar/observation.ts';
import { map, number } from '../grammar/values.ts';
import { ref } from '../grammar/who.ts';

export const weighed = observation({
  value: map(ref, number('grams')).transform((pairs) => pairs.map(([whom, grams]) => ({ who: whom, grams }))),
  order: 130,
  // Cock and hen, or a bird by its id, are weighed away from the nest.
  look: (weights) => weights.some(({ who }) => who.form === 'egg' || who.form === 'chick'),
  example: 'weighed: {c1: 4.5, c2: 4.1}',
  takes: '{egg or bird: grams}, each by itself',
  alsoSaid: ['weight', 'weights', 'mass'],
  doc: 'weight of eggs, chicks, cock or hen, in grams',
});
