import type { Day } from '../../days.ts';
import type { Count } from '../../journal/grammar/who.ts';
import { hostClutch } from '../choose.ts';
import { likeliestToHatch } from '../fertility.ts';
import { joined } from '../lists.ts';
import { canHatchBy, hasClutchInCourse, hatch, longPast, openClutch } from '../lives.ts';
import { type Bird, type Clutch, type Egg, type EggPlace, type Pair, refIn } from '../model.ts';
import { clutchesThere, isInNest, report, type Scene, youngestMeant } from '../scene.ts';
import { addUnseenEgg, ageWhenFound, noteGrown, unseenEggs } from '../unseen.ts';
import type { Apply } from './apply.ts';
import { addLaid, growsBy } from './laid.ts';

/** A look into the nest: what it counted is compared with what the journal knows. */
export const checked: Apply<'checked'> = (scene, value) => {
  if (value.chicks !== null) reconcileChicks(scene, value.chicks);
  if (value.eggs !== null) reconcileEggs(scene, value.eggs);
};

/** Those of the pair's nest, or of the one of its two that the look was into. */
function inNest<T extends Egg | Bird>(scene: Scene, all: Iterable<T>): T[] {
  return [...all].filter((one) => isInNest(scene, hostClutch(one)));
}

function reconcileEggs(scene: Scene, seen: Count): void {
  const known = inNest(scene, scene.pair.here.eggs).length;
  const more = seen.count - known;
  if (more === 0 || (more > 0 && more === takenToday(scene))) return;
  const last = youngestMeant(scene);
  const clutch =
    more > 0 && known === 0 && isUnwritten(last, scene.day) ? openClutch(scene, { counted: true }) : last;
  if (more > 0 && clutch !== null && growsBy(clutch, more, scene.day)) {
    addLaid(scene, clutch, more, true);
    report(scene, seen.at, 'counted-as-laid', { count: more, clutch: clutch.number });
  } else if (more > 0 && clutch !== null && !clutch.counted) {
    for (let i = 0; i < more; i++) addUnseenEgg(clutch, scene.day);
  } else if (!tolerates(seen, more)) {
    mismatch(scene, clutch, 'eggs', known, seen);
  }
}

/** How many of its own eggs were taken elsewhere on this day: a count without a time may be of the hour before that. */
function takenToday({ pair, day, entry }: Scene): number {
  if (entry.time !== null) return 0;
  const isTaken = ({ fate, places }: Egg) =>
    fate === null && places.length > 1 && places.at(-1)?.from === day && hasLain(places.at(-2)?.place, pair);
  return pair.clutches.flatMap(({ eggs }) => eggs.filter(isTaken)).length;
}

function hasLain(place: EggPlace | undefined, pair: Pair): boolean {
  return place?.kind === 'nest' && place.pair === pair;
}

/** Eggs in a nest whose last clutch, if there was any, is long past: nobody wrote that they were laid. */
function isUnwritten(last: Clutch | null, day: Day): boolean {
  return last === null || (last.eggs.length > 0 && last.eggs.every((egg) => longPast(egg, day)));
}

function reconcileChicks(scene: Scene, seen: Count): void {
  const young = inNest(scene, scene.pair.here.young);
  for (const one of young) one.placeholder = false;
  const known = young.filter(({ fledged }) => fledged === null).length;
  const more = seen.count - known;
  const clutch =
    scene.pinned ??
    (more > 0 && isUnknownBrood(scene) ? openClutch(scene, { counted: false }) : null) ??
    youngestMeant(scene, ({ chicks }) => chicks.length > 0);
  if (more > 0) {
    const eggs = inNest(scene, scene.pair.here.eggs)
      .filter((egg) => canHatchBy(egg, scene.day) && !longPast(egg, scene.day))
      .sort(likeliestToHatch(scene.since));
    const age = ageWhenFound(scene);
    const unseen = unseenEggs(scene, scene.day, age);
    const nest = clutch ?? youngestMeant(scene, unseen.grows);
    const told = nest?.eggs.length ?? 0;
    const counted: Egg[] = [];
    for (let i = 0; i < more; i++) {
      const egg = eggs[i] ?? (nest && unseen.another(nest));
      if (egg === null) {
        mismatch(scene, clutch, 'chicks', known, seen);
        break;
      }
      hatch(scene.fold, egg, { from: Math.max(scene.day - age, egg.laid.from), to: scene.day }, scene.day);
      if (i < eggs.length && hostClutch(egg)?.counted) counted.push(egg);
    }
    if (counted.length > 0) {
      const who = counted.map((egg) => refIn(scene, egg)).join(', ');
      report(scene, seen.at, 'counted-as-hatched', { who, count: counted.length });
    }
    if (nest !== null) noteGrown(scene, seen.at, nest, told);
  } else if (more < 0 && !tolerates(seen, more)) {
    mismatch(scene, clutch, 'chicks', known, seen);
  }
}

/** Chicks in a nest of which nobody wrote for longer than a clutch takes: neither an egg, nor young that are still fed. */
function isUnknownBrood(scene: Scene): boolean {
  const { eggs, young } = scene.pair.here;
  const known = inNest<Egg | Bird>(scene, [...eggs, ...young]);
  return known.length === 0 && !hasClutchInCourse(clutchesThere(scene), scene.day);
}

/** `3+` allows more than are known, `~3` one either way. */
function tolerates(seen: Count, more: number): boolean {
  if (seen.exact === 'about') return Math.abs(more) <= 1;
  return seen.exact === 'at least' && more < 0;
}

function mismatch(
  scene: Scene,
  clutch: Clutch | null,
  what: 'eggs' | 'chicks',
  known: number,
  seen: Count,
): void {
  report(scene, seen.at, 'counts-differ', { what, known, seen: seen.count, pair: scene.pair.id });
  if (clutch !== null)
    clutch.mismatches = joined(clutch.mismatches, { day: scene.day, what, known, seen: seen.count });
}
