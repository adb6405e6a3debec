import type { Located } from '../../journal/grammar/values.ts';
import { isDependent, settle } from '../lives.ts';
import { together } from '../model.ts';
import { parentsOf } from '../names.ts';
import { report, type Scene } from '../scene.ts';
import type { Apply } from './apply.ts';

/** Put together, again or for the first time; a new mate takes the old one's place from this day. */
function join(what: 'paired' | 'reunited'): Apply<'paired'> & Apply<'reunited'> {
  return (scene, value, at) => {
    const { pair, day } = scene;
    const anew = value.cock !== null || value.hen !== null;
    if (what === 'paired' && anew && pair.partings.length > 0 && together(pair)) {
      report(scene, at, 'paired-anew', { pair: pair.id });
    }
    if (value.cock !== null) pair.cock = [value.cock.text];
    if (value.hen !== null) pair.hen = [value.hen.text];
    pair.partings.push({ day, what, cock: [...pair.cock], hen: [...pair.hen] });
    houseParents(scene, value.housing);
  };
}

function houseParents(scene: Scene, housing: Located | null): void {
  const { pair, day } = scene;
  if (housing !== null) pair.housing = housing.text;
  for (const bird of parentsOf(scene, 'both')) settle(bird, day, pair.housing, null, null);
  if (housing === null) return;
  for (const young of pair.here.young) {
    if (isDependent(young)) settle(young, day, pair.housing, pair, young.stays.at(-1)?.clutch ?? null);
  }
}

export const paired = join('paired');
export const reunited = join('reunited');
