import { middle, type Profile } from '../../species/profile.ts';
import { walksOff } from '../../species/walks-off.ts';
import { type Logistic, logisticAt, logisticThrough } from '../../statistics/logistic.ts';

/** How chicks of a species gain mass: the likely curve, and the ones between which healthy broods run. Grams, days. */
export interface GrowthCurve {
  likely: Logistic;
  low: Logistic;
  high: Logistic;
}

/** Grams. */
export interface ExpectedMass {
  low: number;
  likely: number;
  high: number;
}

/**
 * A newly hatched chick has about this share of its parents' mass: the median of the shipped profiles that give
 * both (tested beside them).
 */
export const HATCH_SHARE = 0.065;
/**
 * Half of the adult mass is reached at this share of the time in the nest. Fitted to published series it is 0.39 in
 * zebra finch (Killpack et al. 2014, Auk 131:396), 0.41 in canary (Kilner 2001, PNAS 98:11394) and 0.42 in Java
 * sparrow (Gregson & Bowkett 2020) of the middle of the profile's fledging range.
 */
export const HALF_GROWN = 0.4;
/**
 * How much the ends of the band lie beyond the profile's own ranges. So wide that the published zebra finch and
 * canary chicks are inside at every age; strains differ by as much, and a crop full of food is a tenth of a chick.
 */
const BAND = { adult: { low: 0.8, high: 1.15 }, hatch: { low: 0.9, high: 1.8 } };

/**
 * A species' expected growth, made of three figures of its profile: adult mass is the asymptote (perching birds leave
 * the nest at or near it), hatch mass is where it starts, and the fledging age sets the pace.
 * The shape is the logistic of Ricklefs 1967, Ecology 48:978–983, and 1968, Ibis 110:419–451 (from memory).
 *
 * @returns null where the profile has no adult mass or fledging age, and for birds that leave the nest as they hatch
 */
export function growthCurve(profile: Profile): GrowthCurve | null {
  const adult = profile.adultMass?.value;
  const fledging = profile.fledging?.value;
  if (adult === undefined || fledging === undefined) return null;
  if (walksOff(profile)) return null;
  const usual = { low: adult.low * HATCH_SHARE, high: adult.high * HATCH_SHARE };
  const hatch = profile.hatchMass?.value ?? usual;
  return {
    likely: logisticThrough(middle(hatch), middle(adult), HALF_GROWN * middle(fledging)),
    low: logisticThrough(hatch.low * BAND.hatch.low, adult.low * BAND.adult.low, HALF_GROWN * fledging.high),
    high: logisticThrough(
      hatch.high * BAND.hatch.high,
      adult.high * BAND.adult.high,
      HALF_GROWN * fledging.low,
    ),
  };
}

/** The mass of a chick at an age in days, hatching 0; of a chick whose age is a span, over all of it. */
export function expectedMass(curve: GrowthCurve, age: number, oldest = age): ExpectedMass {
  return {
    low: logisticAt(curve.low, age),
    likely: logisticAt(curve.likely, (age + oldest) / 2),
    high: logisticAt(curve.high, oldest),
  };
}
