import * as z from 'zod';
import { observation } from '../grammar/observation.ts';
import { map, text } from '../grammar/values.ts';
import { whoKey } from '../grammar/who.ts';

export const moved = observation({
  value: z.union([
    text.transform((housing) => [{ who: null, housing }]),
    map(whoKey, text).transform((pairs) => pairs.map(([whom, housing]) => ({ who: whom, housing }))),
  ]),
  order: 165,
  look: false,
  example: 'moved: {all: flight 3}',
  takes:
    'housing, for the family, or {who: housing}; `all` are the young that left the nest and still live there',
  alsoSaid: ['transferred', 'caged', 'housed', 'separated'],
  doc: 'to another cage, flight or aviary',
});
