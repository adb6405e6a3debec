import { observation } from '../grammar/observation.ts';
import { map, text } from '../grammar/values.ts';
import { who } from '../grammar/who.ts';

export const fostered = observation({
  value: map(text, who).transform((pairs) => pairs.map(([place, whom]) => ({ place, who: whom }))),
  order: 100,
  brings: (value) => value.map(({ place }) => place.text),
  look: false,
  example: 'fostered: {LW-2: [c1, c2]}',
  takes: '{PAIR: who}, or {hand: who}',
  alsoSaid: ['fosters', 'adopted', 'swapped eggs', 'moved eggs'],
  doc: "moved to that pair to be sat on or fed, or home to their own, which either journal may tell; they stay in their own clutch's record",
});
