import * as z from 'zod';
import { housing } from '../grammar/names.ts';
import { observation } from '../grammar/observation.ts';
import { empty } from '../grammar/values.ts';

export const arrived = observation({
  value: z.union([empty, housing]),
  order: 10,
  look: false,
  example: 'arrived: quarantine cage',
  takes: 'nothing, or the housing',
  alsoSaid: ['bought', 'came', 'acquired', 'purchased', 'joined', 'got'],
  doc: 'came into the room',
});
