import type { Day } from '../../days.ts';
import type { ObservationKey } from '../../journal/observations/index.ts';
import { fertilityOf } from '../../room/fertility.ts';
import type { Room } from '../../room/fold.ts';
import { hostClutch, layingEndsAfter, livesAway } from '../../room/lives.ts';
import { type Clutch, type Event, type Pair, sameSite, together } from '../../room/model.ts';
import { isDown } from '../../room/nests-down.ts';
import { takesLiveFood } from '../../species/live-food.ts';
import { walksOff } from '../../species/walks-off.ts';
import { isAlone, isHenAway } from '../absences.ts';
import { type Brood, livesOrMayHatch, mayHatch, profilesToHatch } from '../brood.ts';
import { foodOn } from '../food-on-offer.ts';
import type { Anchor } from './anchors.ts';

/** Whether something holds for a task that starts from this anchor and is due from `from`. */
export type Condition = (brood: Brood, anchor: Anchor, from: Day) => boolean;

/** Any of these. */
export const any =
  (...conditions: Condition[]): Condition =>
  (brood, anchor, from) =>
    conditions.some((holds) => holds(brood, anchor, from));

/** One of these was recorded for this pair (and clutch, where the entry says so) since the task fell due. */
export const seenSinceDue =
  (...keys: ObservationKey[]): Condition =>
  (brood, _anchor, from) =>
    events(brood, keys).some(({ day }) => day >= from);

/** One of these was recorded after the anchor. */
export const seenAfter =
  (...keys: ObservationKey[]): Condition =>
  (brood, anchor) =>
    events(brood, keys).some(({ day }) => day > anchor.span.to);

/** One of these was recorded on the anchor's first day or after it. */
export const seenSince =
  (...keys: ObservationKey[]): Condition =>
  (brood, anchor) =>
    events(brood, keys).some(({ day }) => day >= anchor.span.from);

function events({ pair, clutch }: Brood, keys: readonly ObservationKey[]): Event[] {
  return pair.events.filter(
    (event) =>
      keys.includes(event.key) &&
      (event.clutch === null ? sameSite(event.site, clutch?.site ?? null) : event.clutch === clutch),
  );
}

/** Every egg that it is about has been told fertile, clear or dead, by a lamp that could tell. */
export const allJudged: Condition = ({ eggs }, { who }) => {
  const meant = who === null ? eggs : eggs.filter((egg) => who.includes(egg));
  return meant.length > 0 && meant.every((egg) => fertilityOf(egg) !== null);
};

export const sittingSeen: Condition = ({ clutch }) =>
  clutch?.sittings.some(({ by }) => by !== 'off') ?? false;

/** The chicks of this species walk off as they hatch and feed themselves. */
export const onFoot: Condition = ({ profile }) => walksOff(profile);

export const not =
  (condition: Condition): Condition =>
  (brood, anchor, from) =>
    !condition(brood, anchor, from);

/** No chick is here, and none may come. */
export const noneMayComeOrLive: Condition = (brood) => !livesOrMayHatch(brood);

/** No egg is left here, in the nest or in store. */
export const eggsEnded: Condition = ({ eggs, stored }) => eggs.length + stored.length === 0;

export const noEggHere: Condition = ({ eggs }) => eggs.length === 0;

/** Somebody hatched or was brought here as a chick. */
export const hatchedHere: Condition = ({ hatched }) => hatched.length > 0;

/** In an incubator or fed by hand: no nest to take down, no parent to watch. */
export const withoutParents: Condition = ({ where }) => where !== 'nest';

export const noYoung: Condition = ({ young }) => young.length === 0;

export const allFledged: Condition = ({ young }) => young.every((bird) => bird.fledged !== null);

/** No more eggs are to be expected: the clutch is old, has hatched, is sat on with as many as are usual, or has no hen. */
export const layingOver: Condition = (brood) => {
  const { clutch, profile, room, hatched } = brood;
  const last = clutch?.eggs.at(-1);
  if (clutch === null || last === undefined || hatched.length > 0) return true;
  const sat = clutch.sittings.some(({ by }) => by !== 'off');
  const complete = clutch.eggs.length >= (profile?.clutch?.value.low ?? 1);
  return (sat && complete) || room.day - last.laid.to > layingEndsAfter(profile) || isHenAway(brood);
};

/** Since when this pair is offered what it is, and whether live food is part of it; null where nobody wrote anything. */
export function foodOffered(pair: Pair, room: Room): { day: Day; live: boolean } | null {
  const food = foodOn(pair, room.settings, room.day);
  return food === null ? null : { day: food.day, live: food.kinds.some(({ kind }) => isLiveFood(kind)) };
}

export const liveFoodOffered: Condition = ({ pair, room }) => foodOffered(pair, room)?.live ?? false;

/** Whether a kind that a keeper wrote is live food; `no live food` is not. */
export const isLiveFood = (kind: string) => LIVE_FOOD.test(kind);

const LIVE_FOOD =
  /(?<!\bno )\b(live|worms?|mealworms?|crickets?|fl(?:y|ies)|larvae?|aphids?|pupae|termites?|maggots?|insects?|ants?)\b/i;

/** The species is reared without live food, or nobody knows that it needs any. */
export const needsNoLiveFood: Condition = (brood) => !profilesToHatch(brood).some(takesLiveFood);

export const noRinging: Condition = ({ room }) => !room.settings.ringing;

/** The pair has laid again since. */
export const laidAgain: Condition = (brood, anchor) => laterClutches(brood, anchor).length > 0;

/** The pair has laid again since, in this very nest. */
export const laidAgainHere: Condition = (brood, anchor) =>
  laterClutches(brood, anchor).some((other) => sameNest(other, brood.clutch));

function laterClutches({ pair, clutch }: Brood, anchor: Anchor): Clutch[] {
  const since = clutch?.opened ?? anchor.span.from;
  return pair.clutches.filter((other) => other.opened > since && other.eggs.length > 0);
}

/** Clutches without a named site can be in any nest of the pair. */
export function sameNest(a: Clutch | null, b: Clutch | null): boolean {
  return sameSite(a?.site ?? null, b?.site ?? null);
}

/** Those that are still fed were all taken out of the parents' housing. */
export const allAway: Condition = ({ young }) => young.every(livesAway);

/** One of the two is left. */
export const alone: Condition = (brood) => isAlone(brood);

export const parted: Condition = ({ pair }) => !together(pair);

/** The nest was taken out or cleaned after the last of the young left it. */
export const nestTakenOut: Condition = (brood, anchor) => {
  const site = brood.clutch?.site ?? null;
  return statesSince(brood, anchor).some((nest) => isDown(nest.state) && sameSite(nest.site, site));
};

/** The pair builds again in this very nest since the young left it, or was offered another in its place. */
export const builtAgainHere: Condition = (brood, anchor) => {
  const site = brood.clutch?.site ?? null;
  // A nest that is named where this one never was is another.
  return statesSince(brood, anchor).some(
    (nest) => BUILT.includes(nest.state) && (nest.site ?? site) === site,
  );
};

const BUILT = ['offered', 'building', 'lined', 'ready'];

/** What was written of the pair's nests after the last of the young left this one. */
function statesSince({ pair, hatched }: Brood, anchor: Anchor): Pair['nestStates'] {
  const left = Math.max(...hatched.map((bird) => bird.fledged?.day ?? Number.NEGATIVE_INFINITY));
  const since = Number.isFinite(left) ? left : anchor.span.from;
  return pair.nestStates.filter(({ day }) => day >= since);
}

/** Somebody is in this nest: eggs of any clutch, or nestlings. */
export const nestInUse: Condition = ({ pair, clutch }) =>
  [...pair.here.eggs].some((egg) => sameNest(hostClutch(egg), clutch)) ||
  [...pair.here.young].some((bird) => bird.fledged === null && sameNest(hostClutch(bird), clutch));

export const noneMayHatch: Condition = ({ eggs }) => !eggs.some(mayHatch);
