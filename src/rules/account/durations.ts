import { meanOf } from '../../statistics/sums.ts';
import { membersOf, type OwnDuration } from '../forecast/own-durations.ts';

/** How long something took, over the clutches of which it is known. Days. */
export interface AccountDuration {
  kind: OwnDuration['kind'];
  clutches: number;
  /** Of these, how many are known within a range only: nobody looked in the days between. */
  unseen: number;
  /** The least that any of them can have taken. */
  shortest: number;
  /** The most. */
  longest: number;
  /** Of the middles of what each can have taken. */
  mean: number;
}

/** Whoever looks once a day knows no better than to a day. */
const TO_THE_DAY = 1;

/** What a pair's clutches took, each kind on its own; a kind that nobody saw is left out. */
export function durationsOf(own: readonly OwnDuration[]): AccountDuration[] {
  return (['incubation', 'fledging'] as const).flatMap((kind) => {
    const all = own.filter((one) => one.kind === kind);
    if (all.length === 0) return [];
    const ranges = all.map(rangeOf);
    return [
      {
        kind,
        clutches: all.length,
        unseen: all.filter(({ width }) => width > TO_THE_DAY).length,
        shortest: Math.min(...ranges.map(({ least }) => least)),
        longest: Math.max(...ranges.map(({ most }) => most)),
        mean: meanOf(ranges.map(({ least, most }) => (least + most) / 2)),
      },
    ];
  });
}

/** The least and the most that a clutch can have taken, as the looks leave it. */
function rangeOf(own: OwnDuration): { least: number; most: number } {
  if (own.width <= TO_THE_DAY) return { least: own.days, most: own.days };
  const members = membersOf(own);
  return {
    least: meanOf(members.map(({ start, end }) => Math.max(0, end.from - start.to))),
    most: meanOf(members.map(({ start, end }) => end.to - start.from)),
  };
}
