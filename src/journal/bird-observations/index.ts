import type * as z from 'zod';
import type { Place } from '../../findings/finding.ts';
import type { ObservationDefinition } from '../grammar/observation.ts';
import { photo } from '../observations/photo.ts';
import { arrived } from './arrived.ts';
import { back } from './back.ts';
import { died } from './died.ts';
import { gone } from './gone.ts';
import { moult } from './moult.ts';
import { moved } from './moved.ts';
import { quarantine } from './quarantine.ts';
import { released } from './released.ts';
import { sexed } from './sexed.ts';
import { treated } from './treated.ts';
import { unwell } from './unwell.ts';
import { weighed } from './weighed.ts';

/** Every observation the log of a bird may hold, in the order of the grammar reference. */
export const birdObservations = {
  arrived,
  quarantine,
  released,
  weighed,
  treated,
  unwell,
  moult,
  moved,
  sexed,
  died,
  gone,
  back,
  photo,
} as const satisfies Record<string, ObservationDefinition>;

export type BirdObservationKey = keyof typeof birdObservations;

/** One thing seen of one bird or done with it; `at` is the key's place. */
export type BirdObservation = {
  [K in BirdObservationKey]: { key: K; at: Place; value: z.output<(typeof birdObservations)[K]['value']> };
}[BirdObservationKey];
