import * as z from 'zod';
import { observation } from '../grammar/observation.ts';
import { map, text } from '../grammar/values.ts';
import { ref } from '../grammar/who.ts';

export const moved = observation({
  value: z.union([
    text.transform((housing) => [{ who: null, housing }]),
    map(ref, text).transform((pairs) => pairs.map(([whom, housing]) => ({ who: whom, housing }))),
  ]),
  order: 165,
  look: false,
  example: 'moved: {c1: flight 3}',
  takes: 'housing, or {who: housing}',
  doc: 'to another cage, flight or aviary',
});
