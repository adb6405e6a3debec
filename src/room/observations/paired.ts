import type { Place } from '../../findings/finding.ts';
import type { Located } from '../../journal/grammar/values.ts';
import type { ObservationValue } from '../../journal/observations/index.ts';
import { livingParents, youngAtHome } from '../family.ts';
import { housingCalled } from '../housings.ts';
import { becomeIndependent, isDependent, settle } from '../lives.ts';
import { together } from '../model.ts';
import { parentsOf } from '../names.ts';
import { report, type Scene } from '../scene.ts';
import type { Apply } from './apply.ts';
import { takePartingFirst } from './parted.ts';

/** Put together, again or for the first time; a new mate takes the old one's place from this day. */
function join(what: 'paired' | 'reunited'): Apply<'paired'> & Apply<'reunited'> {
  return (scene, value, at) => {
    const { pair, day } = scene;
    const isAnew = what === 'paired' && pair.partings.length > 0 && leavesMate(scene, value);
    if (together(pair) && (isAnew || what === 'reunited')) takePartingFirst(scene);
    if (isAnew && together(pair)) report(scene, at, 'paired-anew', { pair: pair.id });
    if (value.cock !== null) pair.cock = [value.cock.text];
    if (value.hen !== null) pair.hen = [value.hen.text];
    pair.partings.push({ day, what, cock: [...pair.cock], hen: [...pair.hen] });
    houseFamily(scene, value.housing, what, at);
  };
}

/** Whether a new mate takes the place of one that is alive and here, as far as it was known who that is. */
function leavesMate(scene: Scene, mates: ObservationValue<'paired'>): boolean {
  return (['cock', 'hen'] as const).some((sex) => {
    const mate = mates[sex]?.text;
    if (mate === undefined) return false;
    const names = scene.pair[sex];
    return (
      names.length > 0 && !names.includes(mate) && parentsOf(scene, sex).every((bird) => bird.fate === null)
    );
  });
}

/** The parents live together from now on, a new mate as much as the old; their young go where they go. */
function houseFamily(scene: Scene, said: Located | null, what: 'paired' | 'reunited', at: Place): void {
  const { fold, pair, day } = scene;
  const family = youngAtHome(pair);
  if (said !== null) pair.housing = housingCalled(fold, said);
  for (const sex of ['cock', 'hen'] as const) {
    for (const bird of livingParents(scene, sex, { at, did: what })) {
      bird.sex ??= sex;
      bird.firstSeen ??= day;
      if (isDependent(bird)) becomeIndependent(bird, { from: bird.fledged?.day ?? day, to: day });
      settle(bird, day, pair.housing, null, null);
    }
  }
  if (said === null) return;
  for (const young of family) {
    settle(young, day, pair.housing, pair, young.stays.at(-1)?.clutch ?? null);
  }
}

export const paired = join('paired');
export const reunited = join('reunited');
