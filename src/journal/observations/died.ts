import * as z from 'zod';
import { observation } from '../grammar/observation.ts';
import { map, text } from '../grammar/values.ts';
import { who } from '../grammar/who.ts';

export const died = observation({
  value: z.union([
    who.transform((whom) => [{ cause: null, who: whom }]),
    map(text, who).transform((pairs) => pairs.map(([cause, whom]) => ({ cause, who: whom }))),
  ]),
  order: 160,
  look: false,
  example: 'died: {chilled: c3}',
  takes: '{cause: who}, or who',
  alsoSaid: ['dead', 'death', 'deaths', 'found dead', 'passed'],
  doc: 'chicks, fledglings, cock or hen found dead',
});
