import * as z from 'zod';
import { observation } from '../grammar/observation.ts';
import { empty, fields, text } from '../grammar/values.ts';

export const reunited = observation({
  value: z.union([
    empty.transform(() => ({ housing: null, cock: null, hen: null })),
    text.transform((housing) => ({ housing, cock: null, hen: null })),
    fields({ housing: text, cock: text, hen: text }),
  ]),
  order: 10,
  look: false,
  example: 'reunited',
  takes: 'nothing, a housing, or {hen: ID} / {cock: ID}',
  doc: 'put together again after they were parted',
});
