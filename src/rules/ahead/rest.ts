import type { Day } from '../../days.ts';
import type { Room } from '../../room/fold.ts';
import { fledging } from '../../room/lives.ts';
import type { Brood } from '../brood.ts';
import { restOf } from '../hen-year.ts';
import { birdsByName } from '../stock/names.ts';

/** A rest that is needed now or within the weeks ahead, in names. */
export interface ComingRest {
  pair: string;
  hen: string;
  housing: string | null;
  clutches: number;
  limit: number;
  /** The first fledging of the last permitted clutch, known or expected at the earliest; null while nothing is foretold. */
  from: Day | null;
  /** From when she may be asked for one more. */
  free: Day;
}

/** Pairs whose hen will need rest. Pairs that are parted rest already. */
export function restAhead(room: Room, broods: readonly Brood[], until: Day): ComingRest[] {
  const find = birdsByName(room.birds);
  return room.pairs.flatMap((pair): ComingRest[] => {
    const needed = restOf(room, pair, find);
    if (needed === null) return [];
    const { hen, clutches, last, limit, free } = needed;
    const from = needed.from ?? foretold(broods.filter(({ clutch }) => clutch === last));
    // By then the oldest of them is a year ago, and she may go on.
    if (from !== null && (free <= from || from > until)) return [];
    return [{ pair: pair.id, hen: hen.id, housing: pair.housing, clutches, limit, from, free }];
  });
}

/** The earliest day on which the first of these is expected to leave the nest. */
function foretold(broods: readonly Brood[]): Day | null {
  const days = broods.flatMap(({ fledge, hatch, profile }) => {
    if (fledge !== null) return [fledge.from];
    return hatch === null ? [] : [hatch.from + Math.floor(fledging(profile).low)];
  });
  return days.length === 0 ? null : Math.min(...days);
}
