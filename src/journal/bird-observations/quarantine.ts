import * as z from 'zod';
import { day } from '../grammar/moment.ts';
import { observation } from '../grammar/observation.ts';
import { fields, number } from '../grammar/values.ts';

export const quarantine = observation({
  value: z.union([
    number('days').transform((days) => ({ days, until: null })),
    fields({ until: day }).transform(({ until }) => ({ days: null, until })),
  ]),
  order: 15,
  look: false,
  example: 'quarantine: 30',
  takes: 'days, or {until: DATE}',
  alsoSaid: ['isolated', 'isolation', 'apart'],
  doc: 'kept apart from now on',
});
