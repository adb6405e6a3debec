import type { Ref } from '../journal/grammar/who.ts';
import { isDependent } from './lives.ts';
import { takeLookFirst } from './look.ts';
import { type Bird, type Chick, type Clutch, clutchId, type Egg, refIn } from './model.ts';
import { birdNamed, parentsOf } from './names.ts';
import { isInNest, report, reportNoPair, type Scene, siteOf } from './scene.ts';
import { candidatesOf, type Wanted } from './wanted.ts';
import { growChicks, growEggs } from './whoever-named.ts';

/** A ref of somebody by the number that it has in its clutch. */
type ClutchRef = Extract<Ref, { form: 'egg' | 'chick' }>;

/** The clutches of the pair that a ref without a pair can mean, youngest first. */
function clutchesFor(scene: Scene, ref: ClutchRef): Clutch[] | null {
  const pair = ref.pair === null ? scene.pair : scene.fold.pairs.get(ref.pair);
  if (pair === undefined) {
    reportNoPair(scene, ref.at, ref.pair ?? '');
    return null;
  }
  if (ref.clutch !== null) return pair.clutches.filter((clutch) => clutch.number === ref.clutch);
  // Another pair is named with the number of its clutch: this is one of the pair's own.
  if (scene.entry.clutch !== null) return scene.pinned === null ? [] : [scene.pinned];
  const all = pair.clutches.toReversed();
  if (siteOf(scene) === null) return all;
  const there = all.filter((clutch) => isInNest(scene, clutch));
  return there.length === 0 ? all : there;
}

/** Of several with one number, the one for which it is possible; of several possible, the one in the nest, else the youngest. */
function pick<T extends Egg | Bird>(
  scene: Scene,
  ref: Ref,
  found: (T & (Egg | Chick))[],
  wanted: Wanted<T>,
): T[] {
  const all = found.filter((one) => wanted.impossible(one) === null);
  const inCourse = all.filter((one) => ('laid' in one ? one.fate === null : isDependent(one)));
  const [one = found[0], other] = inCourse.length === 1 ? inCourse : all;
  if (one === undefined) return [];
  if (other !== undefined) {
    report(scene, ref.at, 'which-clutch', {
      did: wanted.did,
      taken: clutchId(one.clutch),
      others: clutchId(other.clutch),
      number: one.clutch.number,
    });
  }
  return [one];
}

/** How to write a cause that stands where somebody is to be named, of one that can be meant; nothing without such a one. */
function instead<T extends Egg | Bird>(scene: Scene, { text }: Ref, wanted: Wanted<T>): string {
  const cause = wanted.cause?.(text) ?? null;
  const one = cause === null ? undefined : candidatesOf(scene, wanted)[0];
  return one === undefined ? '' : `${wanted.did}: {${cause}: ${refIn(scene, one)}}`;
}

/** The egg that a ref names, and which of several it most likely means. */
export function eggsCalled(scene: Scene, ref: Ref, wanted: Wanted<Egg>): Egg[] {
  if (ref.form !== 'egg') {
    report(scene, ref.at, 'not-an-egg', { who: ref.text, instead: instead(scene, ref, wanted) });
    return [];
  }
  const found = find(
    scene,
    ref,
    ({ eggs }) => eggs[ref.number - 1],
    (egg) => wanted.impossible(egg) === null,
    (meant) => growEggs(meant, ref),
  );
  if (found === null) return [];
  if (found.all.length === 0) report(scene, ref.at, 'no-such-egg', known(scene, ref, found.clutches, 'eggs'));
  return pick(scene, ref, found.all, wanted);
}

/** The chick or bird that a ref names, and which of several it most likely means; `cock` or `hen` may be several. */
export function birdsCalled(scene: Scene, ref: Ref, wanted: Wanted<Bird>): Bird[] {
  if (ref.form === 'parent') {
    const parents = parentsOf(scene, ref.parent);
    if (parents.length === 0)
      report(scene, ref.at, 'parent-unknown', { parent: ref.parent, pair: scene.pair.id });
    return parents;
  }
  if (ref.form === 'ring' || ref.form === 'name') {
    const bird = birdNamed(scene.fold, ref.form === 'ring' ? ref.ring : ref.name, ref.form === 'ring');
    if (bird === null) {
      const args = { who: ref.text, did: wanted.did, instead: instead(scene, ref, wanted) };
      report(scene, ref.at, 'no-such-bird', args);
    }
    return bird === null ? [] : [bird];
  }
  const found = find(
    scene,
    ref,
    ({ chicks }) =>
      ref.form === 'chick' ? chicks[ref.number - 1] : chicks.find(({ egg }) => egg.number === ref.number),
    (bird) => wanted.impossible(bird) === null,
    (meant) => ref.form === 'chick' && growChicks(meant, ref, wanted.inHand === true),
  );
  if (found === null) return [];
  if (found.all.length === 0) {
    const code = ref.form === 'chick' ? 'no-such-chick' : 'egg-not-hatched';
    report(scene, ref.at, code, { ...known(scene, ref, found.clutches, 'chicks'), did: wanted.did });
  }
  return pick(scene, ref, found.all, wanted);
}

/**
 * Those of that number in the clutches that a ref can mean, once a nest that nobody counted holds as many where it can; null
 * where it names a pair that there is not.
 */
function find<T extends Egg | Chick>(
  scene: Scene,
  ref: ClutchRef,
  numbered: (clutch: Clutch) => T | undefined,
  isPossible: (one: T) => boolean,
  grow: (meant: Scene) => boolean,
): { clutches: Clutch[]; all: T[] } | null {
  const clutches = clutchesFor(scene, ref);
  if (clutches === null) return null;
  const all: T[] = [];
  for (const clutch of clutches) {
    const one = numbered(clutch);
    if (one !== undefined) all.push(one);
  }
  for (const one of all) scene.fold.today.passed.delete(one);
  if (all.some(isPossible)) return { clutches, all };
  const [named] = ref.clutch === null ? [] : clutches;
  if (ref.clutch !== null && named === undefined) return { clutches, all };
  const meant = named === undefined ? scene : { ...scene, pair: named.pair, pinned: named };
  if (takeLookFirst(scene) || grow(meant)) return find(scene, ref, numbered, isPossible, grow);
  return { clutches, all };
}

function known(scene: Scene, ref: ClutchRef, clutches: Clutch[], what: 'eggs' | 'chicks') {
  const clutch = clutches[0];
  const have = clutch === undefined ? [] : clutch[what].map((one) => one.ref);
  const where =
    clutch === undefined ? `${ref.pair ?? scene.pair.id} has no such clutch` : `clutch ${clutch.number}`;
  return { who: ref.text, where, have: have.join(', ') };
}
