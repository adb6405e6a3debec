import * as z from 'zod';
import { observation } from '../grammar/observation.ts';
import { empty, text } from '../grammar/values.ts';

export const died = observation({
  value: z.union([empty, text]),
  order: 160,
  look: false,
  example: 'died: old age',
  takes: 'nothing, or the cause',
  alsoSaid: ['dead', 'death', 'found dead', 'passed'],
  doc: 'found dead',
});
