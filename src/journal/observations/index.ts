import type * as z from 'zod';
import type { Place } from '../../findings/finding.ts';
import type { ObservationDefinition } from '../grammar/observation.ts';
import { aged } from './aged.ts';
import { back } from './back.ts';
import { candled } from './candled.ts';
import { chasing } from './chasing.ts';
import { checked } from './checked.ts';
import { courting } from './courting.ts';
import { crops } from './crops.ts';
import { died } from './died.ts';
import { done } from './done.ts';
import { feeding } from './feeding.ts';
import { fledged } from './fledged.ts';
import { food } from './food.ts';
import { fostered } from './fostered.ts';
import { gone } from './gone.ts';
import { hatched } from './hatched.ts';
import { heard } from './heard.ts';
import { independent } from './independent.ts';
import { laid } from './laid.ts';
import { lost } from './lost.ts';
import { measured } from './measured.ts';
import { moult } from './moult.ts';
import { moved } from './moved.ts';
import { nest } from './nest.ts';
import { paired } from './paired.ts';
import { parted } from './parted.ts';
import { photo } from './photo.ts';
import { pipped } from './pipped.ts';
import { pulled } from './pulled.ts';
import { reunited } from './reunited.ts';
import { ringed } from './ringed.ts';
import { roosting } from './roosting.ts';
import { setUnder } from './set.ts';
import { sexed } from './sexed.ts';
import { sitting } from './sitting.ts';
import { skip } from './skip.ts';
import { treated } from './treated.ts';
import { unwell } from './unwell.ts';
import { weighed } from './weighed.ts';

/** Every observation a journal may hold, in the order of the grammar reference. */
export const observations = {
  paired,
  reunited,
  parted,
  courting,
  nest,
  laid,
  pulled,
  set: setUnder,
  sitting,
  candled,
  aged,
  pipped,
  hatched,
  heard,
  lost,
  checked,
  ringed,
  weighed,
  measured,
  crops,
  feeding,
  food,
  fledged,
  roosting,
  independent,
  died,
  back,
  fostered,
  moved,
  gone,
  chasing,
  unwell,
  sexed,
  moult,
  treated,
  photo,
  skip,
  done,
} as const satisfies Record<string, ObservationDefinition>;

export type ObservationKey = keyof typeof observations;

/** What stands behind a key once it is read. */
export type ObservationValue<K extends ObservationKey> = z.output<(typeof observations)[K]['value']>;

/** One thing seen or done, as read from one key of an entry; `at` is the key's place. */
export type Observation = {
  [K in ObservationKey]: { key: K; at: Place; value: ObservationValue<K> };
}[ObservationKey];
