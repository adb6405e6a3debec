import type { Day, Span } from '../days.ts';
import type { Place } from '../findings/finding.ts';
import type { Count } from '../journal/grammar/who.ts';
import type { ObservationKey, ObservationValue } from '../journal/observations/index.ts';
import { hatchingOf } from './clock.ts';
import { everReared } from './family.ts';
import { likeliestToHatch } from './fertility.ts';
import { addLaid, growsBy } from './laying.ts';
import {
  hasClutchInCourse,
  isLeftBehind,
  isOutOfQuestion,
  isOver,
  isStillNestling,
  mayBeg,
} from './left-behind.ts';
import { joined } from './lists.ts';
import {
  canHatchBy,
  hatch,
  hostClutch,
  isDue,
  layingTakes,
  longPast,
  openClutch,
  usualClutch,
} from './lives.ts';
import type { Bird, Clutch, Egg } from './model.ts';
import { isNestGone } from './nests-down.ts';
import {
  clutchesThere,
  isInNest,
  noteHatched,
  report,
  reportedDays,
  type Scene,
  siteOf,
  toldToday,
  youngestMeant,
} from './scene.ts';
import type { PairSighting } from './sightings.ts';
import { addLaidUnseen, addUnseenEgg, ageWhenFound, noteGrown, unseenEggs } from './unseen.ts';
import { notFledged } from './wanted.ts';

/** What a look into a nest counted. */
export type Counted = ObservationValue<'checked'>;

/** A look into the nest: what it counted is compared with what the journal knows, once. */
export function takeLook(scene: Scene, counted: Counted): void {
  if (!scene.fold.today.looked.has(scene.entry)) reconcile(scene, counted);
}

function reconcile(scene: Scene, { chicks, eggs }: Counted): void {
  if (eggs !== null) growUnseen(scene, eggs, chicks);
  if (chicks !== null) reconcileChicks(scene, chicks);
  if (eggs !== null) reconcileEggs(scene, eggs);
}

/**
 * Takes the count of a look of this day before its turn, so that what else is told of that day can name whom the look
 * found: `checked: {chicks: 2}, ringed: {c1: …}`. Not where eggs or young come or go on that day, as the look counted
 * what it ended with. Whether there was such a look, and it was not asked for before.
 */
export function takeLookFirst(scene: Scene): boolean {
  const { fold, pair, entry } = scene;
  const { asked } = fold.today;
  const name = `${pair.id} ${entry.clutch?.number ?? ''}`;
  if (asked.has(name)) return false;
  asked.add(name);
  if (COMES_OR_GOES.some((key) => toldToday(fold, pair, key).length > 0)) return false;
  const looks = looksToCome(scene);
  for (const look of looks) takeEarly(scene, look);
  return looks.length > 0;
}

/** The looks of this day whose turn is still to come, of the clutch that the entry names or without a name as it. */
export function looksToCome({ fold, pair, entry }: Scene): PairSighting[] {
  return toldToday(fold, pair, 'checked').filter(
    (look) => look.entry.clutch?.number === entry.clutch?.number && !fold.today.looked.has(look.entry),
  );
}

/** Takes the count of a look before its turn. */
export function takeEarly(scene: Scene, { entry, observation }: PairSighting): void {
  const { fold, pair, pinned } = scene;
  fold.today.looked.add(entry);
  const since = reportedDays(pair, entry, siteOf({ entry, pinned }));
  const looking = { ...scene, entry, since };
  reconcile(looking, observation.value as Counted);
  // The clutch that the entry names may begin with it.
  scene.pinned ??= looking.pinned;
}

/** What changes how many eggs and young lie in the nest. */
const COMES_OR_GOES: readonly ObservationKey[] = [
  'laid',
  'pulled',
  'set',
  'hatched',
  'fostered',
  'lost',
  'fledged',
  'died',
  'moved',
  'gone',
  'back',
];

/** Those of the pair's nest, or of the one of its two that the look was into. */
export function inNest<T extends Egg | Bird>(scene: Scene, all: Iterable<T>): T[] {
  return [...all].filter((one) => isInNest(scene, hostClutch(one)));
}

/** What a look counts in all is known of the clutch before it is said which of it hatched. */
function growUnseen(scene: Scene, seenEggs: Count, seenChicks: Count | null): void {
  const { here } = scene.pair;
  const eggs = inNest(scene, here.eggs);
  if (isOfMorning(scene, seenEggs, eggsOfMorning(scene), eggs)) return;
  const young = seenChicks === null ? [] : nestlings(scene, seenChicks.count);
  const known = eggsKnown(scene, seenEggs.count) + young.length;
  const more = seenEggs.count + (seenChicks?.count ?? 0) - known;
  const clutch = youngestMeant(scene);
  if (more > 0 && clutch !== null && !growsBy(clutch, more, scene.day) && !isOfNext(scene, clutch, more))
    addLaidUnseen(scene, seenEggs.at, clutch, more);
}

/**
 * How many eggs lie in the nest as far as the journal knows. Those that a brood left behind are there as long as a look counts
 * them, as nobody writes of each that it was taken out; but not where the nest was.
 */
function eggsKnown(scene: Scene, seen: number): number {
  const { pair, day } = scene;
  const eggs = inNest(scene, pair.here.eggs);
  const waited = eggs.filter((egg) => isStillThere(scene, egg)).length;
  const there = eggs.filter((egg) => !(isLeftBehind(egg, day) && isNestGone(egg, day))).length;
  return Math.max(waited, Math.min(seen, there));
}

/** Whether it is waited for, in a nest that nobody took out: a look that misses it does not agree. */
function isStillThere({ day }: Scene, egg: Egg): boolean {
  return !isLeftBehind(egg, day) && !isNestGone(egg, day);
}

function reconcileEggs(scene: Scene, seen: Count): void {
  const eggs = inNest(scene, scene.pair.here.eggs);
  for (const egg of eggs) scene.fold.today.passed.delete(egg);
  const known = eggsKnown(scene, seen.count);
  const more = seen.count - known;
  if (more === 0 || isOfMorning(scene, seen, eggsOfMorning(scene), eggs)) return;
  const last = youngestMeant(scene);
  // Beside eggs that were left behind nobody knows how many are new.
  const clutch = isOfNext(scene, last, more) ? openClutch(scene, { counted: known === 0 }) : last;
  if (more > 0 && clutch !== null && growsBy(clutch, more, scene.day)) {
    addLaid(scene, clutch, more, true);
    report(scene, seen.at, 'counted-as-laid', { count: more, clutch: clutch.number });
  } else if (more > 0 && clutch !== null && !clutch.counted) {
    for (let i = 0; i < more; i++) addUnseenEgg(clutch, scene.day);
  } else if (!tolerates(seen, more)) {
    mismatch(scene, clutch, 'eggs', known, seen);
  }
}

/**
 * Whether a count is of as many as were there when the day began. Without a time it may be of that hour, where the rest of the
 * day's is told with its time, or where some were taken elsewhere or out since. Who died was as a rule not counted with the living, nor what hatched as an egg.
 */
function isOfMorning<T extends Egg | Bird>(
  { fold, pair, entry }: Scene,
  seen: Count,
  began: T[],
  now: T[],
): boolean {
  if (entry.time !== null || seen.count !== began.length) return false;
  return fold.today.timed.has(pair) || began.some((one) => isElsewhere(one) && !now.includes(one));
}

/** Whether one that is not in the nest is somewhere else: an egg also where it was lost or taken out. */
const isElsewhere = ({ fate }: Egg | Bird) => fate === null || fate.kind === 'lost' || fate.kind === 'taken';

/** Whether nobody had told the end of it before that day. */
function wasOpen({ day }: Scene, one: { fate: { day: Day } | null }): boolean {
  return one.fate === null || one.fate.day >= day;
}

/** The eggs that lay in the nest when the day began, but for guests that ended on it without a chick. */
function eggsOfMorning(scene: Scene): Egg[] {
  const { pair, day } = scene;
  const hatched = [...pair.guests].map(({ egg }) => egg);
  const all = new Set([...pair.clutches.flatMap(({ eggs }) => eggs), ...pair.here.eggs, ...hatched]);
  const open = [...all].filter((egg) => wasOpen(scene, egg));
  return inNest(scene, open).filter((egg) => {
    const place = egg.places.findLast(({ from }) => from < day)?.place;
    return place?.kind === 'nest' && place.pair === pair;
  });
}

/** The young that were in the nest when the day began. */
function nestlingsOfMorning(scene: Scene): Bird[] {
  const { pair, day } = scene;
  const open = everReared(pair).filter(
    (bird) => wasOpen(scene, bird) && (bird.fledged === null || bird.fledged.day >= day),
  );
  return inNest(scene, open).filter((bird) => bird.stays.findLast(({ from }) => from < day)?.nest === pair);
}

function reconcileChicks(scene: Scene, seen: Count): void {
  const young = inNest(scene, scene.pair.here.young);
  const uncounted = uncountedBroods(scene);
  for (const one of young) {
    one.placeholder = false;
    scene.fold.today.passed.delete(one);
  }
  const known = nestlings(scene, seen.count).length;
  const more = seen.count - known;
  if (more === 0 || isOfMorning(scene, seen, nestlingsOfMorning(scene), young)) return;
  const isRipe = (egg: Egg) =>
    egg.fate === null && canHatchBy(egg, scene.day) && !isOutOfQuestion(egg, scene.day);
  const clutch =
    scene.pinned ??
    (more > 0 && isUnknownBrood(scene, awaited(scene)) ? openClutch(scene, { counted: false }) : null) ??
    youngestMeant(scene, ({ chicks, eggs }) => chicks.length > 0 || (more > 0 && eggs.some(isRipe)));
  if (more > 0) {
    const hatched = hatchMore(scene, seen.at, clutch, more, { uncounted });
    if (hatched < more) mismatch(scene, clutch, 'chicks', known + hatched, seen);
  } else if (!tolerates(seen, more)) {
    mismatch(scene, clutch, 'chicks', known, seen);
  }
}

/**
 * The young that lie in the nest as far as the journal knows. Of those of whom nobody wrote that they left it, though they
 * should have, as many as a look counts may be late, but not beside the next brood.
 */
function nestlings(scene: Scene, seen: number): Bird[] {
  const { pair, day } = scene;
  const young = inNest(scene, pair.here.young).filter(notFledged);
  const still = young.filter((one) => isStillNestling(one, day));
  const isNext =
    still.length > 0 ||
    young.every((one) => !mayBeg(one, day)) ||
    inNest(scene, pair.here.eggs).some((egg) => isDue(egg, day) && !isOutOfQuestion(egg, day));
  return isNext ? still : young.slice(0, seen);
}

/**
 * The broods of which young were heard or named and nobody counted them since, with the days on which those that are known
 * can have hatched.
 */
function uncountedBroods({ pair, day }: Scene): Map<Clutch, Span> {
  const young = [...pair.here.young].filter((one) => isStillNestling(one, day));
  const some = new Set(young.filter((one) => one.placeholder).map(({ clutch }) => clutch));
  return new Map(
    [...some].map((clutch) => [clutch, hatchingOf(young.filter((one) => one.clutch === clutch))]),
  );
}

/** The eggs in the nest, of this clutch if one is given, that can have hatched. */
export function ripeEggs(scene: Scene, clutch: Clutch | null): Egg[] {
  return inNest(scene, scene.pair.here.eggs).filter(
    (egg) =>
      (clutch === null || egg.clutch === clutch) &&
      canHatchBy(egg, scene.day) &&
      !isOutOfQuestion(egg, scene.day),
  );
}

/**
 * So many more young are in the nest than are known: they hatched since the last look, or with those that nobody counted. How
 * many can have.
 *
 * @param own of this clutch alone
 */
export function hatchMore(
  scene: Scene,
  at: Place,
  clutch: Clutch | null,
  more: number,
  { own = false, uncounted = uncountedBroods(scene) } = {},
): number {
  const eggs = ripeEggs(scene, own ? clutch : null).sort(likeliestToHatch(scene.since));
  const mates = clutch === null ? undefined : uncounted.get(clutch);
  const age = Math.max(ageWhenFound(scene), mates === undefined ? 0 : scene.day - mates.from);
  const unseen = unseenEggs(scene, scene.day, age);
  const nest = clutch ?? youngestMeant(scene, unseen.grows);
  const told = nest?.eggs.length ?? 0;
  const counted: Egg[] = [];
  let hatched = 0;
  for (; hatched < more; hatched++) {
    // Guests of which nobody knows were not laid in the nest of those that feed them.
    const egg = eggs[hatched] ?? (nest?.pair === scene.pair ? unseen.another(nest) : null);
    if (egg === null) break;
    const found = { from: scene.day - age, to: scene.day };
    hatch(scene.fold, egg, withMates(egg, found, uncounted.get(egg.clutch)), scene.day);
    if (hatched < eggs.length && egg.clutch.counted) counted.push(egg);
  }
  noteHatched(scene, at, counted);
  if (nest !== null) noteGrown(scene, at, nest, told);
  return hatched;
}

/** When one can have hatched that may have been there as long as its mates: no longer after them than a clutch is laid. */
function withMates(egg: Egg, found: Span, mates: Span | undefined): Span {
  if (mates === undefined) return found;
  const { profile } = egg.clutch.pair;
  const apart = layingTakes(profile);
  const to = Math.min(found.to, mates.to + apart);
  return { from: Math.min(found.from, mates.from), to: canHatchBy(egg, to) ? to : found.to };
}

/**
 * Whether eggs that a look finds more than are known are of a clutch of which nobody wrote, as the last is over. Of one that
 * nobody counted and whose young have left, they may be left over, where they are no more than it can have held.
 */
function isOfNext(scene: Scene, last: Clutch | null, more: number): boolean {
  const { pair, day } = scene;
  if (inNest(scene, pair.here.eggs).some((egg) => isStillThere(scene, egg))) return false;
  if (last === null) return true;
  const { eggs, chicks, counted } = last;
  if (growsBy(last, more, day)) return false;
  if (counted || chicks.length === 0 || eggs.every((egg) => longPast(egg, day)))
    return eggs.length > 0 && eggs.every((egg) => isOver(egg, day) || isNestGone(egg, day));
  if (inNest(scene, pair.here.young).some(notFledged)) return false;
  return eggs.length + more > usualClutch(pair.profile).high;
}

/** Chicks in a nest of which nobody wrote for longer than a clutch takes: neither an egg, nor young that are still fed. */
export function isUnknownBrood(scene: Scene, known = inNest(scene, everyone(scene))): boolean {
  return known.length === 0 && !hasClutchInCourse(clutchesThere(scene), scene.day);
}

const everyone = ({ pair: { here } }: Scene): (Egg | Bird)[] => [...here.eggs, ...here.young];

/** Who may still be seen there: no egg that a brood left behind, and no young that would feed itself. */
function awaited(scene: Scene): (Egg | Bird)[] {
  const { day } = scene;
  return inNest(scene, everyone(scene)).filter((one) =>
    'laid' in one ? !isOutOfQuestion(one, day) : mayBeg(one, day),
  );
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
