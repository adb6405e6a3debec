import * as z from 'zod';
import { housing } from '../grammar/names.ts';
import { observation } from '../grammar/observation.ts';
import { empty, fields, text } from '../grammar/values.ts';

/** Where the two live from now on, or who is new. */
export const together = z.union([
  empty.transform(() => ({ housing: null, cock: null, hen: null })),
  housing.transform((place) => ({ housing: place, cock: null, hen: null })),
  fields({ housing, cock: text, hen: text }),
]);

export const paired = observation({
  value: together,
  order: 10,
  look: false,
  example: 'paired: flight 2',
  takes: 'nothing, a housing, or {hen: ID} / {cock: ID} for a new mate',
  alsoSaid: ['together', 'introduced', 'put together', 'new mate'],
  doc: 'put together for the first time, or with a new mate',
});
