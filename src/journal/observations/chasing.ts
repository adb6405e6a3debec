import * as z from 'zod';
import { observation } from '../grammar/observation.ts';
import { empty, fields, text, word } from '../grammar/values.ts';

export const chasing = observation({
  value: z.union([
    empty.transform(() => ({ by: null, at: null, level: null })),
    fields({ by: text, at: text, level: word('mild', 'hard', 'fierce') }),
  ]),
  order: 151,
  look: false,
  example: 'chasing: {by: cock, at: hen, level: hard}',
  takes: 'nothing, or {by, at, level: mild, hard or fierce}; of several young `at: young`',
  alsoSaid: ['fighting', 'fight', 'fights', 'aggression', 'aggressive', 'driving', 'plucking'],
  doc: 'aggression',
});
