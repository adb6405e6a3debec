import type { Day, Span } from '../../days.ts';
import { naturally } from '../../findings/naturally.ts';
import { keptIn } from '../../grouped.ts';
import type { Room } from '../../room/fold.ts';
import { housingOf, livesAway } from '../../room/lives.ts';
import { type Bird, type Clutch, clutchId, type Pair, together } from '../../room/model.ts';
import { type Estimate, estimateOf, quantileOf } from '../../statistics/estimate.ts';
import { sumOf } from '../../statistics/sums.ts';
import type { Brood } from '../brood.ts';
import { type Housed, timesHoused } from '../housed.ts';
import { fedUntil, statusOf } from '../stock/life.ts';
import { birdsByName } from '../stock/names.ts';
import type { Course } from './courses.ts';
import { NEVER } from './fate.ts';
import { countBy, type Week } from './weeks.ts';

/** Where the weaned young of this room usually go, and how it fills. */
export interface WeanedPlace {
  housing: string;
  /** Of the young that were moved once they fed themselves, how many went there. */
  went: number;
  moved: number;
  /** Birds that feed themselves and live there today. */
  now: number;
  /** The most that ever did, and when; today's figure where that is the most. */
  most: number;
  mostOn: Day;
  /** At each week's end, if nobody leaves. */
  weeks: { year: number; week: number; to: Day; birds: Estimate }[];
}

/** Young of one clutch that will have to live somewhere else. */
export interface Leaving {
  pair: string;
  /** `LW-1/2`. */
  clutch: string;
  housing: string | null;
  /** Those that feed themselves already and are still with their parents. */
  ready: number;
  /** Those that are expected to come to it in these weeks. */
  young: Estimate;
  /** From the first of them to the last, nine in ten futures; null where only the ready ones are left. */
  days: Span | null;
  /** The hatch that they should be gone by (common practice), where a next clutch is under way. */
  nextHatch: Span | null;
  nextClutch: string | null;
}

/** How many birds that feed themselves live in a housing today, and the most that ever did. */
export interface Occupancy {
  housing: string;
  now: number;
  most: number;
  mostOn: Day;
}

export interface Housing {
  place: WeanedPlace | null;
  leaving: Leaving[];
  /** Every housing with birds that feed themselves, in natural order. */
  occupied: Occupancy[];
  /** Housings that the record names and where nobody lives today. */
  empty: string[];
}

/** Who will have to live where. The journals know no capacity: what a housing held before is all there is to compare. */
export function housingAhead(
  room: Room,
  courses: readonly Course[],
  { broods, weeks, draws }: { broods: readonly Brood[]; weeks: readonly Week[]; draws: number },
): Housing {
  const ever = occupancies(room);
  const occupied = ever.filter(({ now }) => now > 0);
  return {
    place: weanedPlace(room, courses, { ever, weeks, draws }),
    leaving: leavingPairs(room, courses, { broods, until: weeks.at(-1)?.to ?? room.day, draws }),
    occupied,
    empty: emptyHousings(room, new Set(occupied.map(({ housing }) => housing))),
  };
}

/** Where a bird lived while it fed itself and was in the room: while it is lent or missing the housing is free for others. */
function ownStays(bird: Bird, day: Day): Housed[] {
  if (bird.placeholder) return [];
  const end = bird.fate?.day ?? day + 1;
  const since = feedsItselfFrom(bird, day);
  return timesHoused(bird, end)
    .map((one) => ({ ...one, from: Math.max(one.from, since) }))
    .filter(({ from, to }) => from < to);
}

/** As was seen, else by its age; from outside it always did. Whose end nobody knows lives nowhere. */
function feedsItselfFrom(bird: Bird, day: Day): Day {
  if (bird.ref === null) return Number.NEGATIVE_INFINITY;
  if (bird.independent !== null) return bird.independent.day;
  const profile = bird.clutch?.pair.profile ?? null;
  const isHere = statusOf(bird, day, { profile, paired: false }) === 'here';
  return bird.hatched !== null && isHere ? fedUntil(bird.hatched.to, profile) : Number.POSITIVE_INFINITY;
}

function weanedPlace(
  room: Room,
  courses: readonly Course[],
  { ever, weeks, draws }: { ever: readonly Occupancy[]; weeks: readonly Week[]; draws: number },
): WeanedPlace | null {
  const moves = new Map<string, number>();
  for (const bird of room.birds) {
    const housing = bird.independent === null ? null : firstMove(bird, bird.independent.day);
    if (housing !== null) moves.set(housing, (moves.get(housing) ?? 0) + 1);
  }
  const [usual] = [...moves].sort(([, a], [, b]) => b - a);
  if (usual === undefined) return null;
  const [housing, went] = usual;
  const there = ever.find((one) => one.housing === housing);
  const { now, most, mostOn } = there ?? { now: 0, most: 0, mostOn: room.day };
  const all = courses.map(({ independent }) => independent);
  return {
    housing,
    went,
    moved: sumOf(moves.values()),
    now,
    most,
    mostOn,
    weeks: weeks.map(({ year, week, to }) => {
      const come = estimateOf(countBy(all, { from: Number.NEGATIVE_INFINITY, to }, draws));
      return {
        year,
        week,
        to,
        birds: { mean: now + come.mean, low: now + come.low, high: now + come.high },
      };
    }),
  };
}

/** The first other housing that a young bird was brought to once it fed itself. */
function firstMove({ stays }: Bird, independent: Day): string | null {
  const before = stays.findLast(({ from }) => from < independent)?.housing ?? null;
  return stays.find(({ from, housing }) => from >= independent && housing !== before)?.housing ?? null;
}

/** Housing by housing, those that only ever held birds included. */
function occupancies({ birds, day }: Room): Occupancy[] {
  // In each housing, by how many each day changes the number of birds.
  const changes = new Map<string, Map<Day, number>>();
  for (const { housing, from, to } of birds.flatMap((bird) => ownStays(bird, day))) {
    const days = keptIn(changes, housing, () => new Map<Day, number>());
    days.set(from, (days.get(from) ?? 0) + 1);
    days.set(to, (days.get(to) ?? 0) - 1);
  }
  return [...changes]
    .map(([housing, days]) => ({ housing, ...mostOf(days, day) }))
    .sort((a, b) => naturally(a.housing, b.housing));
}

/** How many live there today, and the most at once with the first day of it; today where it never was more. */
function mostOf(changes: ReadonlyMap<Day, number>, day: Day): Omit<Occupancy, 'housing'> {
  const running: { on: Day; there: number }[] = [];
  let there = 0;
  for (const [on, change] of [...changes].sort(([a], [b]) => a - b)) {
    there += change;
    running.push({ on, there });
  }
  const now = running.findLast(({ on }) => on <= day)?.there ?? 0;
  let [most, mostOn] = [now, day];
  for (const one of running) {
    if (Number.isFinite(one.on) && one.there > most) [most, mostOn] = [one.there, one.on];
  }
  return { now, most, mostOn };
}

/** Young of one clutch in the care of one pair, their own or another. */
interface YoungInCare {
  carer: Pair;
  clutch: Clutch;
  /** The clutch of the carer with which they live; null for guests of a pair without one. */
  home: Clutch | null;
  /** Where they live: with the carer, or where they were taken before they fed themselves. */
  housing: string | null;
  ready: number;
  coming: Int32Array[];
}

function youngInCare(room: Room, courses: readonly Course[]): YoungInCare[] {
  const inCare = new Map<string, YoungInCare>();
  const of = (carer: Pair, clutch: Clutch, home: Clutch | null, housing = carer.housing): YoungInCare => {
    const key = `${carer.id} ${clutchId(clutch)} ${housing}`;
    return keptIn(inCare, key, () => ({ carer, clutch, home, housing, ready: 0, coming: [] }));
  };
  const paired = pairedBirds(room);
  for (const pair of room.pairs) {
    for (const clutch of pair.clutches) {
      for (const bird of clutch.chicks) {
        const last = bird.stays.findLast(({ nest }) => nest !== null);
        if (last?.nest && staysOn(bird, last.nest, { day: room.day, paired }))
          of(last.nest, clutch, last.clutch).ready += 1;
      }
    }
  }
  for (const { prospect, independent } of courses) {
    const { pair, clutch, home, is } = prospect;
    if (pair === null) continue;
    const away = is.stage !== 'egg' && livesAway(is.bird);
    of(pair, clutch, home, away ? housingOf(is.bird) : pair.housing).coming.push(independent);
  }
  return [...inCare.values()];
}

function leavingPairs(
  room: Room,
  courses: readonly Course[],
  { broods, until, draws }: { broods: readonly Brood[]; until: Day; draws: number },
): Leaving[] {
  return youngInCare(room, courses).flatMap(({ carer, clutch, home, housing, ready, coming }): Leaving[] => {
    const young = estimateOf(countBy(coming, { from: Number.NEGATIVE_INFINITY, to: until }, draws));
    if (ready === 0 && young.high === 0) return [];
    // Who lives elsewhere is in no chick's way.
    const isHome = housing === carer.housing;
    const next = broods.find(
      (brood) =>
        isHome && brood.pair === carer && brood.clutch !== null && brood.clutch.number > (home?.number ?? 0),
    );
    return [
      {
        pair: carer.id,
        clutch: clutchId(clutch),
        housing,
        ready,
        young,
        days: young.high === 0 ? null : windowOf(coming, until, room.day, draws),
        nextHatch: next?.hatch ? { from: next.hatch.from, to: next.hatch.to } : null,
        nextClutch: next?.clutch ? clutchId(next.clutch) : null,
      },
    ];
  });
}

/** Feeds itself, and lives where it was fed: who lived elsewhere since, or is paired there, is no young that must leave. */
function staysOn(bird: Bird, pair: Pair, { day, paired }: { day: Day; paired: ReadonlySet<Bird> }): boolean {
  if (bird.fate !== null || bird.placeholder || pair.housing === null || paired.has(bird)) return false;
  const since = feedsItselfFrom(bird, day);
  if (since > day || housingOf(bird) !== pair.housing) return false;
  return bird.stays.every(({ from, housing }) => from < since || housing === pair.housing);
}

/** Everyone who is, or may be, in a pair that was not parted. */
function pairedBirds({ birds, pairs }: Room): Set<Bird> {
  const find = birdsByName(birds);
  return new Set(
    pairs.filter(together).flatMap(({ cock, hen }) => [...cock, ...hen].flatMap((name) => find(name) ?? [])),
  );
}

/** From the day that one future in ten has the first of them by, to that by which nine have the last. */
function windowOf(days: readonly Int32Array[], until: Day, day: Day, draws: number): Span {
  const firsts = new Int32Array(draws).fill(NEVER);
  const lasts: number[] = [];
  for (let draw = 0; draw < draws; draw++) {
    let last = Number.NEGATIVE_INFINITY;
    for (const all of days) {
      const on = all[draw] as number;
      if (on > until) continue;
      firsts[draw] = Math.min(firsts[draw] as number, on);
      last = Math.max(last, on);
    }
    if (last > Number.NEGATIVE_INFINITY) lasts.push(last);
  }
  const from = Math.min(until, Math.max(day, quantileOf(firsts.sort(), 0.1)));
  return {
    from,
    to: Math.max(
      from,
      quantileOf(
        lasts.sort((a, b) => a - b),
        0.9,
      ),
    ),
  };
}

function emptyHousings({ pairs, birds }: Room, lived: ReadonlySet<string>): string[] {
  const named = new Set([
    ...pairs.flatMap(({ housing }) => housing ?? []),
    ...birds.flatMap(({ stays }) => stays.flatMap(({ housing }) => housing ?? [])),
  ]);
  const nursing = pairs.filter(({ here }) => here.eggs.size + here.young.size > 0);
  const fed = pairs.flatMap(({ here }) => [...here.young].flatMap((bird) => housingOf(bird) ?? []));
  const taken = new Set([
    ...lived,
    ...fed,
    ...NO_HOUSING,
    ...nursing.flatMap(({ housing }) => housing ?? []),
  ]);
  return [...named].filter((housing) => !taken.has(housing)).sort(naturally);
}

/** Where eggs and young are kept, but no bird is housed. */
const NO_HOUSING = ['incubator', 'hand', 'store'];
