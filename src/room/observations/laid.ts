import type { Day } from '../../days.ts';
import type { Place } from '../../findings/finding.ts';
import type { Ref } from '../../journal/grammar/who.ts';
import { livingParents } from '../family.ts';
import { addLaid, eggNobodySaw, growsBy } from '../laying.ts';
import { incubation, openClutch } from '../lives.ts';
import type { Clutch } from '../model.ts';
import { clutchesThere, report, type Scene } from '../scene.ts';
import type { Apply } from './apply.ts';

export const laid: Apply<'laid'> = (scene, who, at) => {
  livingParents(scene, 'hen', { at, did: 'laid' });
  if (who.kind === 'all') return report(scene, who.at, 'laid-all');
  const clutch = layingClutch(scene, at, who.kind === 'count' ? who.count : who.refs.length);
  const isFirstSeen = eggNobodySaw(clutch) !== null;
  const isExact = who.kind === 'refs' || who.exact === 'exactly';
  if (!isExact) clutch.counted = false;
  const count = who.kind === 'count' ? who.count : namedNew(scene, clutch, who.refs);
  scene.about.push({ at: who.at, who: addLaid(scene, clutch, count) });
  if (isFirstSeen && isExact && count > 0) clutch.counted = clutch.chicksCounted = true;
};

/**
 * How many eggs are new where they are named by their numbers. They come in together, as those of a count do: each with its
 * own lay date. Whoever finds e2 under a hen that was seen sitting saw e1 as well.
 */
function namedNew(scene: Scene, clutch: Clutch, refs: readonly Ref[]): number {
  const isFirstSeen = eggNobodySaw(clutch) !== null;
  const known = isFirstSeen ? 0 : (clutch.eggs.at(-1)?.number ?? 0);
  let fresh = isFirstSeen && refs.every((ref) => ref.form === 'egg' && ref.number > 1) ? 1 : 0;
  for (const ref of refs) {
    const next = known + fresh + 1;
    if (ref.form !== 'egg') {
      report(scene, ref.at, 'not-an-egg', { who: ref.text, instead: '' });
    } else if (ref.number < next) {
      report(scene, ref.at, 'laid-twice', { who: ref.text, clutch: clutch.number });
    } else {
      if (ref.number > next) report(scene, ref.at, 'egg-skipped', { who: ref.text, next: `e${next}` });
      fresh += 1;
    }
  }
  return fresh;
}

/** The clutch that new eggs belong to: the pinned one, the one still being laid, or a new one. */
function layingClutch(scene: Scene, at: Place, count: number): Clutch {
  if (scene.pinned !== null) return scene.pinned;
  if (scene.entry.clutch !== null) return openClutch(scene, { counted: true });
  const there = clutchesThere(scene);
  const open = there.findLast((clutch) => growsBy(clutch, count, scene.day));
  if (open !== undefined) return open;
  const unhatched = there.findLast((clutch) => isWaitedFor(clutch, scene.day));
  if (unhatched !== undefined && eggNobodySaw(unhatched) !== null) return unhatched;
  const fresh = openClutch(scene, { counted: true });
  if (unhatched !== undefined) {
    const [taken, others] = [`a new one, clutch ${fresh.number}`, `clutch ${unhatched.number}`];
    report(scene, at, 'which-clutch', { did: 'laid', taken, others, number: fresh.number });
  }
  return fresh;
}

/** Whether its eggs lie in the nest and none of them can have hatched yet. */
function isWaitedFor({ pair, eggs, chicks }: Clutch, day: Day): boolean {
  const first = eggs.find((egg) => pair.here.eggs.has(egg));
  return first !== undefined && chicks.length === 0 && day - first.laid.to < incubation(pair.profile).low;
}
