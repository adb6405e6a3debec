import { sumOf } from '../../statistics/sums.ts';
import { type Amount, about, between, times } from './amount.ts';

/**
 * Energy that birds need, from their mass. Units: g, days, kJ of metabolised energy. The formulas are regressions over
 * many species, each carried over from memory; single species lie a quarter above or below them.
 */

/** A nestling's energy may be so many times more or less than the regression over species says (from memory). */
const SPECIES_SPREAD = 1.3;

/** A bird in a cage takes this part of what a free one does (assumed; from memory). */
const CAPTIVE = between(0.6, 1);

/**
 * The most that a nestling metabolises on one day, kJ: 11.69 · M^0.9082 · t^−0.428, with M the adult's mass in g and t
 * the age at fledging in days. Weathers 1992, Ibis 134:142 (from memory).
 */
export function nestlingPeak(mass: number, days: number): number {
  return 11.69 * mass ** 0.9082 * days ** -0.428;
}

/**
 * All that a nestling metabolises from hatching to fledging, kJ: 6.65 · M^0.852 · t^0.710. Weathers 1992, Ibis 134:142
 * (from memory).
 */
export function nestlingTotal(mass: number, days: number): number {
  return 6.65 * mass ** 0.852 * days ** 0.71;
}

/**
 * A day's energy of a free-living adult passerine, kJ: 10.4 · M^0.68. Nagy, Girard & Brown 1999, Annual Review of
 * Nutrition 19:247 (from memory). The curve of all birds there (10.5 · M^0.681) differs by 1 %, so it serves for doves,
 * parrots and quails as well.
 */
export function freeLiving(mass: number): number {
  return 10.4 * mass ** 0.68;
}

/** A day's energy of an adult in a cage or aviary, kJ. */
export function adultNeed(mass: number): Amount {
  return times(CAPTIVE, freeLiving(mass));
}

/** The share of its energy that goes into growth is looked for up to here. */
const MOST_GROWTH = 0.6;
const STEP = 0.01;
/** Upkeep grows with mass to this power, as the adult's does. */
const UPKEEP = 0.68;

/**
 * A nestling's energy on each day of age 0, 1 … up to fledging, kJ; the days add up to {@link nestlingTotal}.
 *
 * A day's energy is upkeep, by the mass of that day, and growth, by the gain of that day. Upkeep alone would put too
 * much on the last days; so much of the total is growth that no day asks for more than {@link nestlingPeak}.
 *
 * @param massAt expected mass in g at an age in days, parts of days included
 */
export function nestlingDays(mass: number, days: number, massAt: (age: number) => number): number[] {
  const ages = Array.from({ length: Math.max(1, Math.round(days)) }, (_, age) => age);
  const total = nestlingTotal(mass, ages.length);
  const peak = nestlingPeak(mass, ages.length);
  const upkeep = shares(ages.map((age) => massAt(age + 0.5) ** UPKEEP));
  const growth = shares(ages.map((age) => Math.max(0, massAt(age + 1) - massAt(age))));
  const curve = (part: number) =>
    ages.map((age) => total * ((1 - part) * (upkeep[age] as number) + part * (growth[age] as number)));
  const parts = Array.from({ length: Math.round(MOST_GROWTH / STEP) + 1 }, (_, i) => i * STEP);
  const most = (part: number) => Math.max(...curve(part));
  const reached = parts.find((part) => most(part) <= peak);
  return curve(reached ?? parts.reduce((best, part) => (most(part) < most(best) ? part : best)));
}

/** With the spread between species. */
export function nestlingNeed(energy: number): Amount {
  return about(energy, SPECIES_SPREAD);
}

function shares(values: readonly number[]): number[] {
  const sum = sumOf(values);
  return values.map((value) => (sum > 0 ? value / sum : 1 / values.length));
}
