import type { Who } from '../journal/grammar/who.ts';
import { openClutch, usualClutch } from './lives.ts';
import { takeLookFirst } from './look.ts';
import { report, type Scene, toldToday } from './scene.ts';
import { addUnseenEgg } from './unseen.ts';

/**
 * Eggs are under the lamp of a pair of which nobody wrote of any, as where a journal is begun in the middle of a brood: they
 * are a clutch that nobody saw laid, of as many as somebody tells something of; it is said that they were not known. Later
 * ones, and more than its kind lays, are more likely a slip.
 */
export function beginFirstClutch(scene: Scene, told: readonly { who: Who }[]): void {
  const { pair, day } = scene;
  const [first] = told.filter(({ who }) => eggsOf(who) > 0);
  if (first === undefined || pair.clutches.length + pair.here.eggs.size + pair.here.young.size > 0) return;
  const count = told.reduce((sum, { who }) => sum + eggsOf(who), 0);
  if (count > usualClutch(pair.profile).high) return;
  // What a look of that day counted is all that there is.
  if (takeLookFirst(scene) || toldToday(scene.fold, pair, 'checked').length > 0) return;
  const clutch = openClutch(scene, { counted: false });
  addUnseenEgg(clutch, day);
  report(scene, first.who.at, 'counted-as-laid', { count, clutch: clutch.number });
}

/** How many eggs the words count or name by their numbers. */
function eggsOf(who: Who): number {
  if (who.kind === 'count') return who.count;
  if (who.kind === 'all') return 0;
  return who.refs.filter((ref) => ref.form === 'egg' && ref.clutch === null).length;
}
