import * as z from 'zod';
import { observation } from '../grammar/observation.ts';
import { empty, text } from '../grammar/values.ts';

export const courting = observation({
  value: z.union([empty, text]),
  order: 200,
  look: false,
  example: 'courting: cock with a straw',
  takes: 'nothing or text',
  alsoSaid: ['mating', 'mated', 'display', 'displaying', 'dancing', 'courtship', 'copulation'],
  doc: 'display or mating seen',
});
