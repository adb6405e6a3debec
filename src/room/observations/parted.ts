import type { Place } from '../../findings/finding.ts';
import type { ObservationValue } from '../../journal/observations/index.ts';
import { livingParents } from '../family.ts';
import { housingCalled } from '../housings.ts';
import { settle } from '../lives.ts';
import { type Scene, toldToday } from '../scene.ts';
import type { Apply } from './apply.ts';

export const parted: Apply<'parted'> = (scene, value, at) => {
  if (!scene.fold.today.parted.has(scene.entry)) part(scene, value, at);
};

/**
 * Takes what parted the pair on this day before its turn: two who are together were parted before they are put together
 * again, or one of them with a new mate. Not where the times of both are told.
 */
export function takePartingFirst(scene: Scene): void {
  const { fold, pair, entry: joining } = scene;
  for (const { entry, observation } of toldToday(fold, pair, 'parted')) {
    if ((entry.time !== null && joining.time !== null) || fold.today.parted.has(entry)) continue;
    part({ ...scene, entry }, observation.value as ObservationValue<'parted'>, observation.at);
  }
}

function part(scene: Scene, value: ObservationValue<'parted'>, at: Place): void {
  const { fold, pair, day } = scene;
  fold.today.parted.add(scene.entry);
  pair.partings.push({ day, what: 'parted', cock: [...pair.cock], hen: [...pair.hen] });
  for (const parent of ['cock', 'hen'] as const) {
    const said = value[parent];
    if (said === null) continue;
    const housing = housingCalled(fold, said);
    for (const bird of livingParents(scene, parent, { at, did: 'parted' }))
      settle(bird, day, housing, null, null);
  }
}
