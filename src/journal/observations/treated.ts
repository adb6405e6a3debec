import * as z from 'zod';
import { observation } from '../grammar/observation.ts';
import { map, text } from '../grammar/values.ts';
import { whoKey } from '../grammar/who.ts';

export const treated = observation({
  value: z.union([
    text.transform((what) => [{ who: null, what }]),
    map(whoKey, text).transform((pairs) => pairs.map(([whom, what]) => ({ who: whom, what }))),
  ]),
  order: 154,
  look: false,
  example: 'treated: {hen: as the vet ordered}',
  takes: 'text, for both parents, or {who: text}; `all` is parents and young',
  alsoSaid: ['treatment', 'medicated', 'medication', 'medicine', 'vet'],
  doc: 'what the vet ordered',
});
