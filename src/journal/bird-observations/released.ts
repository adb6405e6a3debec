import * as z from 'zod';
import { housing } from '../grammar/names.ts';
import { observation } from '../grammar/observation.ts';
import { empty } from '../grammar/values.ts';

export const released = observation({
  value: z.union([empty, housing]),
  order: 20,
  look: false,
  example: 'released: flight 2',
  takes: 'nothing, or the housing',
  alsoSaid: ['out of quarantine', 'let out', 'free'],
  doc: 'out of quarantine',
});
