import type { Day, Span } from '../../days.ts';
import { chooseBirds, isUncounted } from '../choose.ts';
import { lampSays, likeliestToHatch } from '../fertility.ts';
import { BROOD_APART, isOutOfQuestion, isStillNestling, LAYS_AGAIN } from '../left-behind.ts';
import { likeLast } from '../lists.ts';
import {
  canHatchBy,
  eggsInReach,
  fledging,
  hatch,
  hostClutch,
  incubation,
  isFedByHand,
  longPast,
  openClutch,
  rearedElsewhere,
  whyNotAlive,
  youngInReach,
} from '../lives.ts';
import { type Bird, type Chick, type Clutch, type Egg, type Lamp, lastPlace, type Seen } from '../model.ts';
import {
  clutchesThere,
  isInNest,
  lastLook,
  means,
  meansNone,
  noteHatched,
  type Scene,
  siteOf,
} from '../scene.ts';
import { type UnseenEggs, unseenEggs } from '../unseen.ts';
import { owner, whyNotFed } from '../wanted.ts';
import type { Apply } from './apply.ts';

/** Brood mates that left the nest together. */
const alikeSpan = likeLast<Span>();
const alike = likeLast<Seen>();

export const fledged: Apply<'fledged'> = (scene, who) => {
  const { pair, day } = scene;
  const nestlings = () => youngInReach(pair).filter((young) => young.fledged === null);
  // Of another clutch than the one it names while young of that nest are known, it is a slip: nothing opens.
  const isThere = meansNone(scene) ? isInNest : means;
  const isInCourse = (young: Bird) => isStillNestling(young, day);
  const inNest = () => nestlings().filter((young) => isThere(scene, hostClutch(young)));
  // Those that should have flown long ago are meant only where they are enough.
  const isKnown = () => {
    const there = inNest();
    return there.some(isInCourse) || (who.kind === 'count' && there.length > 0 && there.length >= who.count);
  };
  const latest = lastHatching(scene);
  const mayHoldMore = (clutch: Clutch) =>
    isUncounted(clutch) && clutch.chicks.every((chick) => chick.fledged === null || isMate(scene, chick));
  if (who.kind === 'count') hatchUntold(scene, who.count, isKnown() ? inNest().length : 0);
  const isNextBrood =
    !isKnown() &&
    scene.pinned === null &&
    who.kind === 'count' &&
    !clutchesThere(scene).some(mayHoldMore) &&
    !meansFostered(scene) &&
    !hadTheirNest(scene);
  if (isNextBrood) openClutch(scene, { counted: false });
  // Young that are in the nest and that nobody counted are as many as leave it: none of months ago is meant.
  const isOfThisBrood =
    who.kind === 'count' &&
    inNest().some((bird) => isInCourse(bird) && mayHoldMore(hostClutch(bird) ?? bird.clutch));
  if (who.kind === 'count') noteHatched(scene, who.at, hatchUncounted(scene, who.count - inNest().length));
  const unseen = unseenEggs(scene, latest);
  const birds = chooseBirds(scene, who, {
    did: 'fledged',
    among: isNextBrood || isOfThisBrood ? nestlings().filter(isInCourse) : nestlings(),
    impossible: (bird) =>
      whyNotAlive(bird) ?? (bird.fledged === null ? whyNotFed(bird) : 'it has left the nest already'),
    past: (bird) => isFedByHand(bird) || !isInCourse(bird),
    rank: (bird) => bird.hatched?.to ?? 0,
    kind: owner,
    mayHoldMore: (clutch) => mayHoldMore(clutch) || unseen.grows(clutch),
    another: (clutch) => unseenNestling(scene, clutch, unseen),
  });
  for (const bird of birds) {
    // Out of the nest is seen without a look into it: on the day, unless the keeper says since when.
    const from = scene.entry.after === null ? day : Math.max(scene.since.from, bird.hatched?.from ?? day);
    bird.fledged = alike({ span: alikeSpan({ from, to: day }), day });
    bird.placeholder = false;
  }
};

/** Its young are reared by others: unless a clutch is named, it is they who can have left a nest, and no brood that nobody saw. */
function meansFostered(scene: Scene): boolean {
  const isMeant = (one: Egg | Bird) => !('laid' in one) || isAllThatCanFly(scene, one);
  return scene.entry.clutch === null && rearedElsewhere(scene.pair).some(isMeant);
}

/**
 * Whether young that leave a nest now can be of this egg, which lies with others, and of no other brood of its pair: one before
 * it would have flown by now, and since it was taken away there was no time for a next one.
 */
function isAllThatCanFly(scene: Scene, egg: Egg): boolean {
  const { profile } = scene.pair;
  const flies = fledging(profile).low;
  const next = lastPlace(egg).from + LAYS_AGAIN + incubation(profile).low + flies;
  return canHatchBy(egg, lastHatching(scene)) && scene.day >= egg.laid.to + flies && scene.day < next;
}

/**
 * Whether it left the nest so lately that it can be of the brood that leaves it now: not before these can have hatched. Of
 * kinds that walk off, the first leave it before the last of their own brood are out.
 */
function isMate({ pair, day }: Scene, { fledged }: Bird): boolean {
  return fledged !== null && day - fledged.day < Math.max(fledging(pair.profile).low, BROOD_APART);
}

/** Others of their brood left the nest lately: there was no room for one that nobody saw. */
function hadTheirNest(scene: Scene): boolean {
  return [...scene.pair.here.young].some((bird) => isMate(scene, bird) && means(scene, hostClutch(bird)));
}

/**
 * Young that left a nest of which nobody told that anything hatched there, nor looked once it had: they came of the eggs that
 * were told. So do guests' young of a nest in which some were heard and never counted, though so many beside them are known;
 * where its own clutch was not counted either, they are found with that.
 */
function hatchUntold(scene: Scene, count: number, known: number): void {
  if (count <= known) return;
  const latest = lastHatching(scene);
  const { pair } = scene;
  const told = new Set([...pair.here.young].map((young) => hostClutch(young) ?? young.clutch));
  const isGuest = ({ clutch }: Egg | Chick) => clutch.pair !== pair;
  const mayHoldMoreGuests = (egg: Egg) =>
    [egg, ...pair.here.young].some(
      (one) => isGuest(one) && hostClutch(one) === hostClutch(egg) && isUncounted(one.clutch),
    );
  const isUntold = (egg: Egg) => {
    const host = hostClutch(egg);
    if (!means(scene, host)) return false;
    if (isGuest(egg) && (host === null || !isUncounted(host)) && mayHoldMoreGuests(egg)) return true;
    if (known > 0 || told.has(host ?? egg.clutch) || wasSeenHatched(scene, host)) return false;
    return host === null || host.chicks.length === 0;
  };
  const eggs = eggsInReach(pair)
    .filter((egg) => isUntold(egg) && canHatchBy(egg, latest) && !longPast(egg, latest))
    .sort(likeliestToHatch(hatchingDays(scene)));
  for (const egg of eggs.slice(0, count - known)) {
    hatchUnseen(scene, egg);
    egg.clutch.chicksCounted = false;
  }
}

/**
 * So many more leave the nest than were told to have hatched of a counted clutch: of its open eggs, where they are enough and
 * nobody looked again. None once it is out of the question, nor of eggs that the lamp showed clear or dead. Which hatched.
 */
function hatchUncounted(scene: Scene, count: number): Egg[] {
  if (count <= 0 || meansFostered(scene)) return [];
  // Who sleeps in the nest leaves it each morning.
  const isOfBrood = (egg: Egg) =>
    egg.clutch.chicks.length > 0 &&
    egg.clutch.chicks.every(({ roosting }) => roosting.length === 0) &&
    !isUncounted(egg.clutch) &&
    !isUncounted(hostClutch(egg) ?? egg.clutch);
  const eggs = eggsInReach(scene.pair)
    .filter((egg) => means(scene, hostClutch(egg)) && !wasSeenHatched(scene, hostClutch(egg)))
    .filter((egg) => isOfBrood(egg) && canHatchBy(egg, lastHatching(scene)))
    .filter((egg) => !isOutOfQuestion(egg, scene.day) && !NOTHING_LIVES.has(lampSays(egg)))
    .sort(likeliestToHatch(hatchingDays(scene)));
  if (eggs.length < count) return [];
  const hatched = eggs.slice(0, count);
  for (const egg of hatched) hatchUnseen(scene, egg);
  return hatched;
}

/** What the lamp shows of eggs out of which nothing hatches. */
const NOTHING_LIVES = new Set<Lamp | null>(['clear', 'dead']);

/** Whether somebody looked into the nest of this clutch, or of guests by themselves, when all had hatched of what leaves it now. */
function wasSeenHatched(scene: Scene, clutch: Clutch | null): boolean {
  const latest = lastHatching(scene);
  return (lastLook(scene.pair, siteOf(scene) ?? clutch?.site ?? null, scene.day) ?? latest) > latest;
}

/** A fledgling of a nest that was never looked into, of no more eggs than were counted. */
function unseenNestling(scene: Scene, clutch: Clutch, unseen: UnseenEggs): Bird | null {
  const latest = lastHatching(scene);
  const open = isUncounted(clutch) ? eggsInReach(scene.pair) : [];
  const [ripe] = open
    .filter((egg) => hostClutch(egg) === clutch && canHatchBy(egg, latest))
    .sort(likeliestToHatch(hatchingDays(scene)));
  const egg = ripe ?? unseen.another(clutch);
  return egg === null ? null : hatchUnseen(scene, egg);
}

/** It hatched a fledging age ago. */
function hatchUnseen(scene: Scene, egg: Egg): Bird {
  return hatch(scene.fold, egg, hatchingDays(scene), scene.day);
}

/** The days on which young can have hatched that leave the nest on this. */
function hatchingDays(scene: Scene): Span {
  return { from: scene.day - fledging(scene.pair.profile).high, to: lastHatching(scene) };
}

/** The last of them. */
function lastHatching({ pair, day }: Scene): Day {
  return day - fledging(pair.profile).low;
}
