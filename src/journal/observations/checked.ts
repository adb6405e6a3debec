import * as z from 'zod';
import { observation } from '../grammar/observation.ts';
import { empty, fields } from '../grammar/values.ts';
import { count } from '../grammar/who.ts';

export const checked = observation({
  value: z.union([
    empty.transform(() => ({ eggs: null, chicks: null })),
    fields({ eggs: count, chicks: count }),
  ]),
  order: 180,
  look: true,
  example: 'checked: {eggs: 2, chicks: 2}',
  takes: 'nothing, or {eggs: count, chicks: count}',
  alsoSaid: ['eggs', 'chicks', 'look', 'looked', 'inspected', 'inspection', 'nest check', 'seen', 'all well'],
  doc: 'a look into the nest; the counts are compared with what the journal knows',
});
