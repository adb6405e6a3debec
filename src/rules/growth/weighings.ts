import type { Day } from '../../days.ts';
import { hatchedOn } from '../../room/clock.ts';
import type { Bird } from '../../room/model.ts';
import type { Profile, Range } from '../../species/profile.ts';
import { byDay } from '../by-day.ts';
import { type ExpectedMass, expectedMass, growthCurve, HATCH_SHARE } from './curve.ts';
import { isHeavierThanGrown, isSlip } from './slip.ts';

/** One weight of a day that can be compared. */
export interface Weighing {
  day: Day;
  grams: number;
}

/** A nestling's weight beside what is expected of its species at its age. */
export interface Standing extends Weighing {
  /** Age in days, as far as it is known. */
  age: Range;
  usual: ExpectedMass;
}

/** Two weights of a day that differ by more than this share cannot both be right: a full crop explains less. */
const ONE_DAY = 0.1;
/**
 * One weight a day, oldest first. Slips are left out, and days on which two looks differ by more than a full crop
 * explains: nobody knows which is right.
 */
export function weighingsOf(bird: Bird, profile: Profile | null): Weighing[] {
  return byDay(bird.weights.filter((weight) => doubtOf(bird, profile, weight) === null)).flatMap(
    ({ day, all }) => {
      const grams = all.map((one) => one.grams);
      const [least, most] = [Math.min(...grams), Math.max(...grams)];
      return most > least * (1 + ONE_DAY) ? [] : [{ day, grams: grams.at(-1) as number }];
    },
  );
}

/** How a weight stands beside the species' curve; null out of the nest, and where age or species are not known. */
export function standingOf(bird: Bird, profile: Profile | null, weighing: Weighing): Standing | null {
  const age = nestlingAge(bird, weighing.day);
  const curve = profile === null ? null : growthCurve(profile);
  if (age === null || curve === null) return null;
  const { day, grams } = weighing;
  return { day, grams, age, usual: expectedMass(curve, age.low, age.high) };
}

/** The last weight that a chick had in the nest. */
export function lastStanding(bird: Bird, profile: Profile | null): Standing | null {
  const inNest = weighingsOf(bird, profile).flatMap((one) => standingOf(bird, profile, one) ?? []);
  return inNest.at(-1) ?? null;
}

/** What a weight of this bird on that day can be, grams, where it is not; null where it is, or nobody knows. */
export function doubtOf(bird: Bird, profile: Profile | null, weighing: Weighing): Range | null {
  const adult = profile?.adultMass?.value;
  if (adult === undefined) return null;
  const { day, grams } = weighing;
  if (bird.clutch === null || isOut(bird, day)) return isSlip(grams, adult) ? adult : null;
  const usual = standingOf(bird, profile, weighing)?.usual ?? {
    low: profile?.hatchMass?.value.low ?? adult.low * HATCH_SHARE,
    high: adult.high,
  };
  return isHeavierThanGrown(grams, adult) || isSlip(grams, usual) ? usual : null;
}

function isOut({ fledged, independent }: Bird, day: Day): boolean {
  return (fledged !== null && fledged.day <= day) || (independent !== null && independent.day <= day);
}

function nestlingAge(bird: Bird, day: Day): Range | null {
  const hatched = hatchedOn(bird);
  if (hatched === null || bird.clutch === null || isOut(bird, day) || day < hatched.from) return null;
  return { low: Math.max(0, day - hatched.to), high: day - hatched.from };
}
