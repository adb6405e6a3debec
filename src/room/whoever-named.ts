import type { Day } from '../days.ts';
import type { Place } from '../findings/finding.ts';
import { grouped } from '../grouped.ts';
import { eggClock, hatchingOf } from './clock.ts';
import { isStillNestling } from './left-behind.ts';
import { begun, feederOf, incubation, isDependent, nestOf, openClutch, usualClutch } from './lives.ts';
import { type Counted, hatchMore, isUnknownBrood, ripeEggs } from './look.ts';
import { type Chick, type Clutch, type Egg, type Pair, refIn } from './model.ts';
import { meansNone, report, type Scene, type Today, toldToday, youngestMeant } from './scene.ts';
import { addUnseenEgg } from './unseen.ts';

/**
 * An egg that is named by its number in a clutch that nobody counted is there, and so are all before it. Whether so many
 * can be.
 */
export function growEggs(scene: Scene, { number, at }: { number: number; at: Place }): boolean {
  const clutch = youngestMeant(scene);
  if (clutch === null || clutch.counted || number > usualClutch(scene.pair.profile).high) return false;
  if (clutch.eggs.length >= number || !clutch.eggs.some((egg) => scene.pair.here.eggs.has(egg))) return false;
  const more: Egg[] = [];
  while (clutch.eggs.length < number) more.push(addUnseenEgg(clutch, scene.day));
  notePassed(scene, at, more);
  return true;
}

/**
 * A chick that is named by its number is there, and so are all before it, where young were heard that nobody counted, or where
 * it was in the hand and nobody wrote that its brood had hatched. Whether so many can be.
 */
export function growChicks(
  scene: Scene,
  { number, at }: { number: number; at: Place },
  inHand: boolean,
): boolean {
  if (meansNone(scene) || number > usualClutch(scene.pair.profile).high) return false;
  const heard = heardBrood(scene);
  const clutch = heard ?? (inHand ? (uncountedBrood(scene) ?? unseenBrood(scene)) : null);
  if (clutch === null) return false;
  const { counted, chicks } = clutch;
  const known = chicks.length;
  if (known >= number) return false;
  const there = { ...scene, pair: rearedBy(clutch) };
  // Of guests no more came than there are eggs of them.
  if (there.pair !== clutch.pair && number - known > ripeEggs(there, clutch).length) return false;
  // No line counts who was left in the nest: it may be as old as those that are known.
  const uncounted = new Map(known === 0 ? [] : [[clutch, hatchingOf(chicks)]]);
  hatchMore(there, at, clutch, number - known, { own: true, uncounted });
  const come = clutch.chicks.slice(known);
  // Of eggs that were counted it was said who hatched. Of a brood that begins with this, it is worth a question.
  if (!counted && heard === null) reportCome(there, at, come);
  else if (!counted) notePassed(there, at, come);
  const [first] = clutch.chicks;
  if (heard === null && known === 0 && first !== undefined) {
    // Whoever is named was not counted: there may be more.
    first.placeholder = true;
    clutch.chicksCounted = false;
  }
  return clutch.chicks.length >= number;
}

/** Of whom came to a nest with the one that was named, all but that one may be a slip of its number. */
function notePassed(scene: Scene, at: Place, come: readonly (Egg | Chick)[]): void {
  for (const one of come.slice(0, -1)) scene.fold.today.passed.set(one, { scene, at });
}

/** At the end of a day: whom a number that was named passed over, and nothing else that was told of the day. */
export function tellPassed({ passed }: Today): void {
  for (const [at, some] of grouped(passed, ([, { at }]) => at)) {
    const come = some.map(([one]) => one);
    reportCome(some[0][1].scene, at, come);
  }
}

/** Says who is taken to have come to a nest, as no line tells of it. */
function reportCome(scene: Scene, at: Place, come: readonly (Egg | Chick)[]): void {
  const [first] = come;
  if (first === undefined) return;
  const who = come.map((one) => refIn(scene, 'laid' in one ? one : one.egg)).join(', ');
  const args = { who, count: come.length, clutch: first.clutch.number };
  report(scene, at, 'laid' in first ? 'counted-as-laid' : 'counted-as-hatched', args);
}

/** The clutch of young that were heard in a nest and that nobody counted, also where others feed them. */
function heardBrood(scene: Scene): Clutch | null {
  return youngestMeant(scene, (clutch) => nestlingsOf(clutch, scene.day).some((one) => one.placeholder));
}

/** The clutch of young in a nest of which nobody knows how many they are, as of `hatched: 2+`. */
function uncountedBrood(scene: Scene): Clutch | null {
  return youngestMeant(scene, (clutch) => !clutch.chicksCounted && nestlingsOf(clutch, scene.day).length > 0);
}

function nestlingsOf({ chicks }: Clutch, day: Day): Chick[] {
  return chicks.filter((one) => isDependent(one) && feederOf(one) !== null && isStillNestling(one, day));
}

/** In whose nest a clutch is, or that of its own pair. */
function rearedBy({ pair, eggs, chicks }: Clutch): Pair {
  const nests = [
    ...chicks.filter(isDependent).map(feederOf),
    ...eggs.filter(({ fate }) => fate === null).map(nestOf),
  ];
  return nests.find((nest) => nest !== null) ?? pair;
}

/** The clutch of young of which nobody wrote before: of the eggs in the nest, if they can have hatched, else a new one. */
function unseenBrood(scene: Scene): Clutch | null {
  if (isSeenWhole(scene)) return null;
  if (isUnknownBrood(scene)) return scene.pinned ?? openClutch(scene, { counted: false });
  const clutch = youngestMeant(scene);
  return clutch !== null &&
    clutch.chicks.length === 0 &&
    clutch.eggs.some((egg) => isTimeToHatch(egg, scene.day))
    ? clutch
    : null;
}

/** Whether a look of this day found eggs, and tells of no chick. */
function isSeenWhole({ fold, pair, entry }: Scene): boolean {
  return toldToday(fold, pair, 'checked').some((look) => {
    const { eggs, chicks } = look.observation.value as Counted;
    return (
      look.entry.clutch?.number === entry.clutch?.number && eggs !== null && eggs.count > 0 && !chicks?.count
    );
  });
}

/** Whether a chick out of it can be in the hand, if it was sat on as long as its kind is; that it hatched sooner somebody has to say. */
function isTimeToHatch(egg: Egg, day: Day): boolean {
  const since = eggClock(egg, day)?.start.from ?? begun(egg).day;
  return day - since >= incubation(egg.clutch.pair.profile).low;
}
