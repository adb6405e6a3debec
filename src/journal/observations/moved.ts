import * as z from 'zod';
import { housing } from '../grammar/names.ts';
import { observation } from '../grammar/observation.ts';
import { map } from '../grammar/values.ts';
import { whoKey } from '../grammar/who.ts';
import { died } from './died.ts';

const MOVED = 165;

export const moved = observation({
  value: z.union([
    housing.transform((place) => [{ who: null, housing: place }]),
    map(whoKey, housing).transform((pairs) => pairs.map(([whom, place]) => ({ who: whom, housing: place }))),
  ]),
  order: MOVED,
  // Who is named may have died there that day; the family, all, or so many are those that live.
  orderOf: (value) => (value.some(({ who }) => who?.kind !== 'refs') ? MOVED : died.order - 1),
  look: false,
  example: 'moved: {all: flight 3}',
  takes:
    'housing, for the family, or {who: housing}; `all` are the young that left the nest and still live there',
  alsoSaid: ['transferred', 'caged', 'housed', 'separated'],
  doc: 'to another cage, flight or aviary',
});
