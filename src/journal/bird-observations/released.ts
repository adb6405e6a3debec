import * as z from 'zod';
import { observation } from '../grammar/observation.ts';
import { empty, text } from '../grammar/values.ts';

export const released = observation({
  value: z.union([empty, text]),
  order: 20,
  look: false,
  example: 'released: flight 2',
  takes: 'nothing, or the housing',
  alsoSaid: ['out of quarantine', 'let out', 'free'],
  doc: 'out of quarantine',
});
