import * as z from 'zod';
import { observation } from '../grammar/observation.ts';
import { empty, text } from '../grammar/values.ts';

export const heard = observation({
  value: z.union([empty, text]),
  order: 95,
  look: false,
  example: 'heard: begging at dusk',
  takes: 'nothing or text',
  alsoSaid: ['begging', 'calling', 'noise'],
  doc: 'begging, shells, food carried in: chicks are there, without a look',
});
