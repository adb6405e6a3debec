import { observation } from '../grammar/observation.ts';
import { map, text } from '../grammar/values.ts';
import { ref } from '../grammar/who.ts';

export const ringed = observation({
  value: map(ref, text).transform((pairs) => pairs.map(([chick, code]) => ({ chick, code }))),
  order: 120,
  look: true,
  example: 'ringed: {c1: LW 26 014}',
  takes: '{chick: code}',
  alsoSaid: ['banded', 'band', 'bands', 'rung', 'rings'],
  doc: 'closed ring put on',
});
