import type { Day } from '../../../days.ts';
import { upTo } from '../../../days.ts';
import type { Room } from '../../../room/fold.ts';
import type { Bird } from '../../../room/model.ts';
import { type Estimate, estimateOf } from '../../../statistics/estimate.ts';
import { sumOf } from '../../../statistics/sums.ts';
import type { Course } from '../courses.ts';
import { countBy, type Week } from '../weeks.ts';
import type { Occupancy } from './occupancy.ts';

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

/** The housing to which most young were brought once they fed themselves; null while none was ever moved. */
export function weanedPlace(
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
      const come = estimateOf(countBy(all, upTo(to), draws));
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
