import * as z from 'zod';
import { observation } from '../grammar/observation.ts';
import { fields, text, wordOf } from '../grammar/values.ts';

const state = wordOf({
  offered: {},
  building: {},
  lined: {},
  ready: { alsoSaid: ['built', 'finished', 'complete'] },
  moved: {},
  removed: {},
  cleaned: {},
});

export const nest = observation({
  value: z.union([
    state.transform((is) => ({ state: is, site: null, height: null, material: null })),
    fields({ state, site: text, height: text, material: text }),
  ]),
  order: 20,
  look: false,
  example: 'nest: {state: lined, site: gorse bundle, material: coconut fibre}',
  takes: 'offered, building, lined, ready, moved, removed or cleaned; or {state, site, height, material}',
  alsoSaid: [
    'building',
    'built',
    'nest building',
    'nesting',
    'nest material',
    'material',
    'nest box',
    'lined',
  ],
  doc: 'state of the nest, how it was made',
});
