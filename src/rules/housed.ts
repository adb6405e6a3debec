import { type Day, without } from '../days.ts';
import type { Absence, Bird } from '../room/model.ts';

/** A time that a bird spent in one housing; `to` is the first day on which it was there no more. */
export interface Housed {
  housing: string;
  from: Day;
  to: Day;
}

/**
 * Where a bird lived and from when to when, up to the day on which it was in the room no more: as long as it stayed in one
 * housing, less the times for which it was away.
 */
export function timesHoused(
  { stays, absences }: Bird,
  end: Day,
  away: readonly Absence[] = absences,
): Housed[] {
  const all: Housed[] = [];
  stays.forEach(({ from, housing }, i) => {
    const to = Math.min(end, stays[i + 1]?.from ?? end);
    const last = all.at(-1);
    if (housing === null || from >= to) return;
    if (last?.housing === housing && last.to === from) last.to = to;
    else all.push({ housing, from, to });
  });
  return away.reduce(
    (left, { fate, until }) => left.flatMap((one) => without(one, { from: fate.day, to: until })),
    all,
  );
}
