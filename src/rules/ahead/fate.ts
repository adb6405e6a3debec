import type { Day, Span } from '../../days.ts';
import type { Profile, Range } from '../../species/profile.ts';
import type { Random } from '../../statistics/random.ts';
import { RINGS_TRIED } from '../agenda/state.ts';
import type { Deal } from './deal.ts';
import type { Prospect } from './prospects.ts';

/** Stands for a day that does not come. */
export const NEVER = 2 ** 31 - 1;

/** Age in days from which a closed ring is fitted where the profile does not say (common practice: 5–10). */
const USUAL_RING_AGE: Range = { low: 5, high: 10 };

/** The ages in days between which a closed ring goes on; from when the agenda asks for a look. */
export function ringAge(profile: Profile | null): Range {
  const { low, high } = profile?.ringAge?.value ?? USUAL_RING_AGE;
  return { low: Math.floor(low) - RINGS_TRIED, high: Math.floor(high) };
}

/** Days are `NEVER` where it does not come so far, and where it has by now. */
export interface Fate {
  possible: boolean;
  hatched: Day;
  ringable: Day;
  fledged: Day;
  independent: Day;
}

const nothing: Fate = {
  possible: true,
  hatched: NEVER,
  ringable: NEVER,
  fledged: NEVER,
  independent: NEVER,
};

/** What becomes of one egg or young bird in one draw; impossible where a look has seen otherwise. */
export function fateOf({ is, profile }: Prospect, deal: Deal, chance: Random, day: Day): Fate {
  // All are drawn whatever becomes of it, so that each future takes as many from the stream.
  const fertile = chance.uniform();
  const hatches = chance.uniform();
  const luck = { nest: chance.uniform(), after: chance.uniform() };
  const start = onDay(is.start, deal.start);
  if (is.stage !== 'egg') {
    const { fledged } = is.bird;
    if (fledged === null) return inNest(start, Math.max(0, day - start), profile, deal, luck);
    const left = Math.max(1, fledged.day - start);
    return { ...nothing, independent: weaned(start, left, deal, luck.after, day - fledged.day) };
  }
  if (is.toCome !== null && is.toCome > deal.eggs) return nothing;
  if (!is.fertile && fertile >= deal.luck.fertility) return nothing;
  if (hatches >= deal.luck.hatchOfFertile) return nothing;
  const hatched = Math.round(start + deal.incubation);
  if (hatched <= is.seen) return { ...nothing, possible: false };
  return { ...inNest(hatched, 0, profile, deal, luck), hatched };
}

function onDay({ from, to }: Span, at: number): Day {
  return from + Math.floor(at * (to - from + 1));
}

interface Luck {
  nest: number;
  after: number;
}

/** The way of a chick from the age it has come to; the nest behind it is no longer a risk. */
function inNest(hatched: Day, age: number, profile: Profile | null, deal: Deal, { nest, after }: Luck): Fate {
  const days = Math.max(1, deal.fledging);
  const lived = age + daysLived(nest, deal.luck.fledge, days);
  const ringable = lived > ringAge(profile).low ? hatched : NEVER;
  if (lived < days) return { ...nothing, ringable };
  const fledged = Math.round(hatched + days);
  return { ...nothing, ringable, fledged, independent: weaned(hatched, days, deal, after, 0) };
}

/** The day on which a fledgling feeds itself, if it lives; some days of the time between are behind it. */
function weaned(hatched: Day, days: number, deal: Deal, chance: number, behind: number): Day {
  const fed = Math.max(1, deal.independence - days);
  const left = Math.max(0, fed - behind);
  const through = chance < deal.luck.independence ** (left / fed);
  return through ? Math.round(hatched + days + fed) : NEVER;
}

/** Days until death at an even daily risk of which this share outlives so many days; whoever has lived so far begins anew. */
function daysLived(chance: number, share: number, days: number): number {
  return days * Math.abs(Math.log(chance) / Math.log(share));
}
