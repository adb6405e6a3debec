import * as z from 'zod';
import { housing } from '../grammar/names.ts';
import { observation } from '../grammar/observation.ts';
import { empty, fields } from '../grammar/values.ts';

export const parted = observation({
  value: z.union([
    empty.transform(() => ({ cock: null, hen: null })),
    fields({ cock: housing, hen: housing }),
  ]),
  order: 200,
  look: false,
  example: 'parted: {cock: flight 7}',
  takes: 'nothing, or who went where: {cock: flight 7}',
  alsoSaid: ['separated', 'split', 'split up', 'divorced', 'apart'],
  doc: 'separated',
});
