import { bisector } from 'd3-array';
import type { Day } from '../days.ts';
import { keptIn } from '../grouped.ts';
import type { RoomSettings } from '../journal/settings.ts';
import type { Pair } from '../room/model.ts';

/** What was written to be on offer from a day on. */
export type Food = Pair['food'][number];

type RoomLog = Pick<RoomSettings, 'log'>;

/** What the room's own log says up to a day: for every pair alike. */
export function foodInRoom({ log }: RoomLog, day: Day): Food[] {
  return log.flatMap(({ date, food }) =>
    food === null || date > day
      ? []
      : [{ day: date, kinds: food.map(({ kind, grams }) => ({ kind: kind.text, grams })) }],
  );
}

/**
 * What a pair is offered on a day: as last recorded in its journal or in the room's log; both count where they were
 * written on one day. Null where nobody wrote anything.
 */
export function foodOn(pair: Pair, settings: RoomLog, day: Day): Food | null {
  const offered = [...lastOf(pair.food, day), ...lastOf(roomFood(settings), day)];
  if (offered.length === 0) return null;
  const latest = Math.max(...offered.map((food) => food.day));
  return { day: latest, kinds: offered.flatMap((food) => (food.day === latest ? food.kinds : [])) };
}

const bisect = bisector<Food, Day>(({ day }) => day).right;

/** All that was written on the last day up to another; the list is in order of days. */
function lastOf(all: readonly Food[], day: Day): Food[] {
  const end = bisect(all, day);
  let start = end;
  while (start > 0 && all[start - 1]?.day === all[end - 1]?.day) start -= 1;
  return all.slice(start, end);
}

/** A season asks for every egg and chick what was on offer: the room's log is put in order once. */
const known = new WeakMap<RoomSettings['log'], Food[]>();

function roomFood({ log }: RoomLog): Food[] {
  return keptIn(known, log, () =>
    foodInRoom({ log }, Number.POSITIVE_INFINITY).sort((a, b) => a.day - b.day),
  );
}
