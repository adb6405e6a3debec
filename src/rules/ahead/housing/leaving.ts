import type { Day, Span } from '../../../days.ts';
import { upTo } from '../../../days.ts';
import { keptIn } from '../../../grouped.ts';
import type { Room } from '../../../room/fold.ts';
import { housingOf, livesAway } from '../../../room/lives.ts';
import { type Bird, type Clutch, clutchId, type Pair, together } from '../../../room/model.ts';
import { type Estimate, estimateOf, quantileOf } from '../../../statistics/estimate.ts';
import type { Brood } from '../../brood.ts';
import { birdsByName } from '../../stock/names.ts';
import type { Course } from '../courses.ts';
import { NEVER } from '../fate.ts';
import { countBy } from '../weeks.ts';
import { feedsItselfFrom } from './occupancy.ts';

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

/** The young that will leave the pairs that feed them, up to a day. */
export function leavingPairs(
  room: Room,
  courses: readonly Course[],
  { broods, until, draws }: { broods: readonly Brood[]; until: Day; draws: number },
): Leaving[] {
  return youngInCare(room, courses).flatMap(({ carer, clutch, home, housing, ready, coming }): Leaving[] => {
    const young = estimateOf(countBy(coming, upTo(until), draws));
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
