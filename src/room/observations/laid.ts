import type { Day } from '../../days.ts';
import type { Place } from '../../findings/finding.ts';
import { livingParents } from '../family.ts';
import { addLaid, growsBy } from '../laying.ts';
import { incubation, openClutch } from '../lives.ts';
import type { Clutch } from '../model.ts';
import { clutchesThere, report, type Scene } from '../scene.ts';
import type { Apply } from './apply.ts';

export const laid: Apply<'laid'> = (scene, who, at) => {
  livingParents(scene, 'hen', { at, did: 'laid' });
  if (who.kind === 'all') return report(scene, who.at, 'laid-all');
  const clutch = layingClutch(scene, at, who.kind === 'count' ? who.count : who.refs.length);
  if (who.kind === 'count') {
    if (who.exact !== 'exactly') clutch.counted = false;
    scene.about.push({ at: who.at, who: addLaid(scene, clutch, who.count) });
    return;
  }
  // Eggs by ref come in together, as those of a count do: each with its own lay date.
  let fresh = 0;
  for (const ref of who.refs) {
    const next = (clutch.eggs.at(-1)?.number ?? 0) + fresh + 1;
    if (ref.form !== 'egg') {
      report(scene, ref.at, 'not-an-egg', { who: ref.text, instead: '' });
    } else if (ref.number < next) {
      report(scene, ref.at, 'laid-twice', { who: ref.text, clutch: clutch.number });
    } else {
      if (ref.number > next) report(scene, ref.at, 'egg-skipped', { who: ref.text, next: `e${next}` });
      fresh += 1;
    }
  }
  scene.about.push({ at: who.at, who: addLaid(scene, clutch, fresh) });
};

/** The clutch that new eggs belong to: the pinned one, the one still being laid, or a new one. */
function layingClutch(scene: Scene, at: Place, count: number): Clutch {
  if (scene.pinned !== null) return scene.pinned;
  if (scene.entry.clutch !== null) return openClutch(scene, { counted: true });
  const there = clutchesThere(scene);
  const open = there.findLast((clutch) => growsBy(clutch, count, scene.day));
  if (open !== undefined) return open;
  const unhatched = there.findLast((clutch) => isWaitedFor(clutch, scene.day));
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
