import type { Day, Span } from '../days.ts';
import { naturally } from '../findings/naturally.ts';
import { grouped } from '../grouped.ts';
import { type EggClock, eggClock, hatchedOn, type SittingStart, sittingStart } from '../room/clock.ts';
import { lampSays } from '../room/fertility.ts';
import type { Room } from '../room/fold.ts';
import { isFed } from '../room/left-behind.ts';
import { fledging, hostClutch, housingOf, isDependent, isFedByHand } from '../room/lives.ts';
import {
  type Bird,
  type Chick,
  type Clutch,
  type Egg,
  fullRef,
  lastPlace,
  type Pair,
} from '../room/model.ts';
import { lastLook } from '../room/scene.ts';
import { takesLiveFood } from '../species/live-food.ts';
import type { Profile } from '../species/profile.ts';
import { walksOff } from '../species/walks-off.ts';
import type { Durations } from './durations.ts';
import { type Duration, usualRange } from './forecast/duration.ts';
import type { DurationKind } from './forecast/own-durations.ts';
import { type ForecastWindow, firstWindow, windowOf } from './forecast/window.ts';
import { mayHatchUntil } from './season/fates.ts';

/** A forecast window and the duration that it rests on. */
export interface Expected extends ForecastWindow {
  duration: Duration;
  /** The look that still found eggs, where it tells more of when they were begun than the journal did; else null. */
  whole: Day | null;
  /** An egg that was seen pipped before its kind was due: the window begins with it. */
  pipped: Egg | null;
}

/** How long an egg has been warmed, and how long its own species sits; null where nobody knows that. */
export interface EggTime {
  egg: Egg;
  clock: EggClock;
  duration: Duration | null;
}

/**
 * What is to be cared for as one: the eggs and young that live with one clutch of a pair, guests included, or what
 * of a clutch is in an incubator and hand-fed. Tasks are made for broods, because that is what a keeper opens.
 */
export interface Brood {
  room: Room;
  pair: Pair;
  /** The pair's own clutch; null where its nest holds guests only. */
  clutch: Clutch | null;
  profile: Profile | null;
  /** `nest`, or where they are cared for without a pair. */
  where: 'nest' | 'incubator' | 'hand';
  housing: string | null;
  /** Open eggs here. */
  eggs: Egg[];
  /** Own eggs in the cool store. */
  stored: Egg[];
  /** Young that are fed here, in the nest and out of it. */
  young: Chick[];
  /** Everyone who hatched here or was brought here, whatever became of them. */
  hatched: Chick[];
  sitting: SittingStart | null;
  /** The eggs here that are or were warmed, with what is known of how long their kind takes. */
  clocks: EggTime[];
  /** Those of them that are warmed now and may hatch. */
  waiting: EggTime[];
  /** Days on which those of the eggs that may hatch are expected to. */
  hatch: Expected | null;
  /** The same for all eggs here, the clear ones included: the days by which their time is over. */
  term: Expected | null;
  /** Days on which the nestlings are expected to leave the nest. */
  fledge: Expected | null;
}

/** Every brood of the room that is in course or was lately: one a clutch and place, in the order of pairs. */
export function broodsOf(room: Room, durations: Durations): Brood[] {
  return room.pairs.flatMap((pair) => {
    const own = pair.clutches
      .filter((clutch) => isCurrent(clutch, room.day))
      .flatMap((clutch) => [
        makeBrood(room, durations, pair, clutch, 'nest'),
        ...(['incubator', 'hand'] as const)
          .map((where) => makeBrood(room, durations, pair, clutch, where))
          .filter((brood) => brood.eggs.length + brood.young.length > 0),
      ]);
    const guests = makeBrood(room, durations, pair, null, 'nest');
    return guests.eggs.length + guests.young.length > 0 ? [...own, guests] : own;
  });
}

/** After so many days nothing is asked of a clutch any more, unless somebody of it is still in the nest or fed. */
const FORGOTTEN = 180;

function isCurrent(clutch: Clutch, day: Day): boolean {
  return day - clutch.opened <= FORGOTTEN || clutch.chicks.some(isDependent);
}

function makeBrood(
  room: Room,
  durations: Durations,
  pair: Pair,
  clutch: Clutch | null,
  where: Brood['where'],
): Brood {
  const eggs = eggsAt(pair, clutch, where);
  const young = youngAt(pair, clutch, where);
  const first = eggs[0]?.clutch ?? young[0]?.clutch ?? clutch;
  const profile = first?.pair.profile ?? pair.profile;
  const durationOf = (kind: DurationKind, one: Egg | Bird) =>
    durationFor(kind, profileIn({ profile }, one), durations);
  const clocks = eggs.flatMap((egg): EggTime[] => {
    const clock = eggClock(egg, room.day);
    return clock === null ? [] : [{ egg, clock, duration: durationOf('incubation', egg) }];
  });
  const running = clocks.filter(({ clock }) => clock.running);
  const waiting = running.filter(({ egg }) => mayHatch(egg));
  const nestlings = young.filter((bird) => bird.fledged === null);
  return {
    room,
    pair,
    clutch,
    profile,
    where,
    housing: where === 'nest' ? pair.housing : where,
    eggs,
    stored: where === 'nest' && clutch !== null ? clutch.eggs.filter(isStored) : [],
    young,
    hatched: where === 'nest' ? hatchedAt(pair, clutch) : young,
    sitting: clutch === null ? null : sittingStart(clutch, room.day),
    clocks,
    waiting,
    hatch: hatchOf(waiting),
    term: expected(running.map(sat)),
    fledge: expected(
      nestlings.map((bird) => ({
        start: hatchedOn(bird),
        duration: durationOf('fledging', bird),
        whole: null,
      })),
    ),
  };
}

/** How long a species takes, as this room knows it; null where nobody knows, and where there is nothing to wait for. */
function durationFor(kind: DurationKind, profile: Profile | null, durations: Durations): Duration | null {
  const range = profile?.[kind]?.value;
  if (profile === null || range === undefined) return null;
  // Young that walk off as they hatch have no day of leaving the nest.
  return kind === 'fledging' && walksOff(profile) ? null : durations(kind, profile.species, range);
}

/**
 * When sitting on it can have begun, for what is still to come, and the last look that tells it: an egg that was found whole
 * cannot have been begun so long before that any of its kind would have hatched. A start that is known stays as it is:
 * no day is foreseen later because it was waited for.
 */
export function startSeen({ egg, clock: { start }, duration }: EggTime): { start: Span; whole: Day | null } {
  const { place } = lastPlace(egg);
  const nothing = { start, whole: null };
  if (duration === null || place.kind !== 'nest') return nothing;
  const longest = Math.ceil(Math.max(usualRange(duration).high, duration.longest));
  // Whole after its whole time it tells of itself, not of when it was begun; and beside chicks nobody counts every egg.
  const told = Math.min(start.to + longest, firstHatching(egg.clutch));
  const seen = lastLook(place.pair, place.clutch?.site ?? null, told);
  if (seen === null || seen <= (egg.clutch.eggs.at(-1) ?? egg).laid.to) return nothing;
  const from = seen - longest;
  return from <= start.from ? nothing : { start: { from, to: start.to }, whole: seen };
}

function firstHatching({ chicks }: Clutch): Day {
  return Math.min(Number.POSITIVE_INFINITY, ...chicks.map(({ hatched }) => hatched.to));
}

/** Guests of another species take their own time; what the forecast rests on is what makes its first day. */
function expected(
  starts: readonly { start: Span; duration: Duration | null; whole: Day | null }[],
): Expected | null {
  const windows = [...grouped(starts, ({ duration }) => duration)].flatMap(([duration, own]) => {
    if (duration === null) return [];
    const window = windowOf(
      duration,
      own.map(({ start }) => start),
    );
    if (window === null) return [];
    const whole = own.every((one) => one.whole !== null) ? own[0].whole : null;
    const from = Math.max(window.from, whole ?? window.from);
    const likely = Math.max(from, window.likely);
    return [{ from, likely, to: Math.max(likely, window.to), duration, whole, pipped: null }];
  });
  const first = firstWindow(windows);
  return first === undefined ? null : { ...first, to: Math.max(...windows.map(({ to }) => to)) };
}

const sat = (time: EggTime) => ({ ...startSeen(time), duration: time.duration });

function hatchOf(waiting: readonly EggTime[]): Expected | null {
  return fromPipped(expected(waiting.map(sat)), waiting);
}

/** The brood as if it had no other eggs and young than those that are reared on live food: beside them others may hatch that need none. */
export function onLiveFood(brood: Brood): Brood {
  const isFed = (one: Egg | Bird) => takesLiveFood(profileIn(brood, one));
  const waiting = brood.waiting.filter(({ egg }) => isFed(egg));
  const [eggs, hatched] = [brood.eggs.filter(isFed), brood.hatched.filter(isFed)];
  return { ...brood, eggs, hatched, waiting, hatch: hatchOf(waiting) };
}

/** A chick that has cracked its shell is out within a day or two, whatever its kind usually takes. */
function fromPipped(hatch: Expected | null, waiting: readonly EggTime[]): Expected | null {
  const early = waiting
    .map(({ egg }) => egg)
    .filter(({ pipped }) => hatch !== null && pipped !== null && pipped < hatch.from)
    .sort((a, b) => (a.pipped as Day) - (b.pipped as Day))[0];
  if (hatch === null || early === undefined) return hatch;
  const from = early.pipped as Day;
  return { ...hatch, from, likely: Math.min(hatch.likely, from + 1), pipped: early };
}

/** The profile of its own species: a guest takes after its parents, not after those that rear it. */
export function profileIn({ profile }: Pick<Brood, 'profile'>, one: Egg | Bird): Profile | null {
  return one.clutch === null ? profile : one.clutch.pair.profile;
}

/** Profiles of the species that may hatch here. */
export function profilesToHatch(brood: Brood): Profile[] {
  const all = brood.eggs.filter(mayHatch).map((egg) => profileIn(brood, egg));
  return [...new Set(all)].filter((one) => one !== null);
}

/** Neither the lamp nor anything else has ruled it out. */
export function mayHatch(egg: Egg): boolean {
  if (egg.fate !== null) return false;
  if (egg.pipped !== null) return true;
  const says = lampSays(egg);
  return says !== 'clear' && says !== 'dead';
}

/** Whether nobody is ever asked to look in, and nobody hatched that was heard or seen: there may be chicks, or none. */
export function isNeverSeen({ pair, where, hatched }: Brood): boolean {
  return pair.nestLooks === 'never' && where === 'nest' && hatched.length === 0;
}

/**
 * The last day of the hatch window; where nobody looked in since, that up to which there may be chicks that nobody saw, and
 * where nobody ever does, that by which they would have left the nest. Null where no egg may hatch.
 */
export function mayHoldChicksUntil(brood: Brood): Day | null {
  const { pair, clutch, hatch, profile, room, where, hatched, waiting } = brood;
  if (hatch === null || where !== 'nest' || hatched.length > 0) return hatch?.to ?? null;
  const looked = lastLook(pair, clutch?.site ?? null, room.day + 1);
  if (looked !== null && looked > hatch.to) return hatch.to;
  if (isNeverSeen(brood)) return hatch.to + fledging(profile).high;
  // What is asked until then is asked for the last time on the day after it.
  return Math.max(hatch.to, ...waiting.map(({ egg }) => mayHatchUntil(egg, room.day) - 1));
}

/** Where those are whom something is about, where they all live in one place; else, and of the whole brood, where that is. */
export function placeOf({ where, housing }: Brood, who: readonly (Egg | Bird)[] | null): string | null {
  if (where !== 'nest') return where;
  const [home = housing, other] = new Set(who?.map((one) => ('laid' in one ? housing : housingOf(one))));
  return other === undefined ? home : housing;
}

/** Whether anybody of a brood lives, or may still hatch. */
export function livesOrMayHatch({ eggs, young }: Brood): boolean {
  return young.length > 0 || eggs.some(mayHatch);
}

/** Those of its young that somebody has to feed: of others nobody may have written that they feed themselves. */
export function stillFed({ young, room }: Brood): Chick[] {
  return young.filter((bird) => isFed(bird, room.day));
}

function isStored(egg: Egg): boolean {
  return egg.fate === null && lastPlace(egg).place.kind === 'store';
}

/** The pair's own before its guests, each in the order of laying or hatching, whoever came when. */
function ownFirst(pair: Pair): (a: Egg | Bird, b: Egg | Bird) => number {
  return (a, b) =>
    Number(a.clutch?.pair !== pair) - Number(b.clutch?.pair !== pair) || naturally(fullRef(a), fullRef(b));
}

function eggsAt(pair: Pair, clutch: Clutch | null, where: Brood['where']): Egg[] {
  if (where !== 'nest') {
    return (clutch?.eggs ?? []).filter((egg) => egg.fate === null && lastPlace(egg).place.kind === where);
  }
  return [...pair.here.eggs].filter((egg) => hostClutch(egg) === clutch).sort(ownFirst(pair));
}

function youngAt(pair: Pair, clutch: Clutch | null, where: Brood['where']): Chick[] {
  if (where === 'nest') {
    return [...pair.here.young]
      .filter((bird) => isDependent(bird) && bird.stays.at(-1)?.clutch === clutch)
      .sort(ownFirst(pair));
  }
  // An incubator holds eggs only: what hatches in it is fed by hand from that hour.
  if (where === 'incubator') return [];
  return (clutch?.chicks ?? []).filter(isFedByHand);
}

function hatchedAt(pair: Pair, clutch: Clutch | null): Chick[] {
  const guests = [...pair.guests].filter((bird) =>
    bird.stays.some((stay) => stay.nest === pair && stay.clutch === clutch),
  );
  const own = (clutch?.chicks ?? []).filter((bird) => bird.stays.some((stay) => stay.nest === pair));
  return [...own, ...guests];
}
