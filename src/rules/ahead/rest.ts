import type { Day } from '../../days.ts';
import type { Room } from '../../room/fold.ts';
import { fledging } from '../../room/lives.ts';
import { together } from '../../room/model.ts';
import type { Brood } from '../brood.ts';
import { clutchesOfHen, clutchLimit, freeAgain, inYearTo } from '../hen-year.ts';
import { birdsByName } from '../stock/names.ts';

/** A hen that has had, or will with her clutch of today have had, as many clutches as a year allows her. */
export interface Rest {
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
export function restAhead(room: Room, broods: readonly Brood[], until: Day): Rest[] {
  const find = birdsByName(room.birds);
  return room.pairs.flatMap((pair): Rest[] => {
    const [name, ...others] = pair.hen;
    const hen = name === undefined || others.length > 0 ? null : find(name);
    const limit = clutchLimit(room, pair.profile);
    if (!hen || hen.fate !== null || limit === null || !together(pair)) return [];
    const year = inYearTo(clutchesOfHen(room, hen, find), room.day);
    const free = freeAgain(year, limit);
    if (year.at(-1)?.pair !== pair || year.length < limit || free === null) return [];
    const from = firstFledging(broods.find(({ clutch }) => clutch !== null && clutch === year.at(-1)));
    // By then the oldest of them is a year ago, and she may go on.
    if (from !== null && free <= from) return [];
    if (from !== null && from > until) return [];
    const { id, housing } = pair;
    return [{ pair: id, hen: hen.id, housing, clutches: year.length, limit, from, free }];
  });
}

function firstFledging(brood: Brood | undefined): Day | null {
  if (brood === undefined) return null;
  const known = brood.hatched.flatMap(({ fledged }) => fledged?.day ?? []);
  if (known.length > 0) return Math.min(...known);
  if (brood.fledge !== null) return brood.fledge.from;
  return brood.hatch === null ? null : brood.hatch.from + Math.floor(fledging(brood.profile).low);
}
