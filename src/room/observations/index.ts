import type { ObservationKey } from '../../journal/observations/index.ts';
import { aged } from './aged.ts';
import type { Apply } from './apply.ts';
import { back } from './back.ts';
import { candled } from './candled.ts';
import { chasing } from './chasing.ts';
import { checked } from './checked.ts';
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
import { paired, reunited } from './paired.ts';
import { parted } from './parted.ts';
import { pipped } from './pipped.ts';
import { pulled } from './pulled.ts';
import { recorded } from './recorded.ts';
import { ringed } from './ringed.ts';
import { roosting } from './roosting.ts';
import { setUnder } from './set.ts';
import { sexed } from './sexed.ts';
import { sitting } from './sitting.ts';
import { skip } from './skip.ts';
import { treated } from './treated.ts';
import { unwell } from './unwell.ts';
import { weighed } from './weighed.ts';

/** What each observation does to the room. */
export const applications: { [K in ObservationKey]: Apply<K> } = {
  paired,
  reunited,
  parted,
  courting: recorded,
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
  photo: recorded,
  skip,
  done,
};
