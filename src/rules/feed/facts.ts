import { keptIn } from '../../grouped.ts';
import { incubation, independence as usualIndependence } from '../../room/lives.ts';
import { liveFoodLead } from '../../species/live-food.ts';
import { type LiveFood, middle, type Profile } from '../../species/profile.ts';
import { walksOff } from '../../species/walks-off.ts';
import { logisticAt, logisticThrough } from '../../statistics/logistic.ts';
import { daysRange } from '../../words.ts';
import { growthCurve, HALF_GROWN, HATCH_SHARE } from '../growth/curve.ts';
import { nestlingDays } from './energy.ts';

/**
 * Taken where a profile does not say it: a small finch (common practice). Ages in days, masses in g. The age at fledging
 * is a likely one, not the widest that there is, as where dates are foretold: amounts are reckoned from its middle, and
 * who is thought to grow until day 27 is reckoned too light, and given too little, on every day before.
 */
const UNKNOWN = {
  mass: 12,
  fledging: { low: 18, high: 22 },
  independence: usualIndependence(null),
} as const;

/** What a species' food is reckoned from. */
export interface FeedFacts {
  species: string | null;
  /** Of an adult, g. */
  mass: number;
  /** Age in days at which the young leave the nest, and at which the last of them feed themselves. */
  fledging: number;
  independence: number;
  /** kJ on each day of age until it leaves the nest. */
  nestling: readonly number[];
  /** Expected mass in g at an age in days. */
  massAt: (age: number) => number;
  /** Null where nobody knows. */
  liveFood: LiveFood | null;
  /** Days before the first day of the hatch window. */
  lead: number;
  /** What the profile does not say and was taken instead, in words. */
  assumed: string[];
}

/** The facts of each species, worked out once. */
export function factsOf(): (profile: Profile | null) => FeedFacts {
  const known = new Map<Profile | null, FeedFacts>();
  return (profile) => keptIn(known, profile, () => reckon(profile));
}

function reckon(profile: Profile | null): FeedFacts {
  const assumed: string[] = [];
  const or = <T>(value: T | undefined, usual: T, words: string): T => {
    if (value === undefined) assumed.push(words);
    return value ?? usual;
  };
  const sitting = incubation(profile);
  or(profile?.incubation?.value, sitting, `incubation ${daysRange(sitting)}`);
  const range = profile?.adultMass?.value;
  const mass = or(range && middle(range), UNKNOWN.mass, `adult-mass ${UNKNOWN.mass} g`);
  const fledging = or(profile?.fledging?.value, UNKNOWN.fledging, `fledging ${daysRange(UNKNOWN.fledging)}`);
  const independence = or(
    profile?.independence?.value,
    UNKNOWN.independence,
    `independence ${daysRange(UNKNOWN.independence)}`,
  );
  // The formulas are for nestlings; chicks that walk off at once grow until they are independent.
  const early = walksOff(profile);
  const days = early ? independence.low : Math.round(middle(fledging));
  const massAt = massCurve(profile, mass, days);
  return {
    species: profile?.species ?? null,
    mass,
    fledging: days,
    independence: Math.max(independence.high, days + 1),
    nestling: nestlingDays(mass, days, massAt),
    massAt,
    liveFood: or(profile?.liveFood?.value, null, 'live-food unknown, so none is planned'),
    lead: liveFoodLead(profile),
    assumed,
  };
}

/** Expected mass in g by age: the species’ growth curve, or one of the same shape where the profile makes none. */
function massCurve(profile: Profile | null, mass: number, days: number): (age: number) => number {
  const own = profile === null ? null : growthCurve(profile);
  const hatchMass = profile?.hatchMass?.value.low ?? mass * HATCH_SHARE;
  const usual = () => logisticThrough(Math.min(hatchMass, mass / 3), mass, HALF_GROWN * days);
  const curve = own?.likely ?? usual();
  return (age) => logisticAt(curve, age);
}
