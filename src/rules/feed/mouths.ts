import type { Day, Span } from '../../days.ts';
import type { LiveFood } from '../../species/profile.ts';
import { sumBy } from '../../statistics/sums.ts';
import { type Amount, sum, times } from './amount.ts';
import { adultNeed, nestlingNeed } from './energy.ts';
import type { FeedFacts } from './facts.ts';
import {
  blend,
  type Diet,
  type Food,
  type Foods,
  foodsOf,
  gramsFor,
  MAINTENANCE,
  NO_FOOD,
  rearingDiet,
} from './foods.ts';

/** One young bird that is fed, or an egg that may become one. */
export interface Mouth {
  facts: FeedFacts;
  /** The days on which it hatched or may hatch, each with its probability; they add up to at most 1. */
  hatches: readonly { day: Day; probability: number }[];
  /** The earliest of them to reckon with, from which the most is counted. */
  earliest: Day;
  /** How many there may be at most: young that were only heard stand for more than one. */
  most: number;
}

/** A chick that hatched on one of these days. */
export function hatchedMouth(facts: FeedFacts, { from, to }: Span, most = 1): Mouth {
  return { facts, hatches: [{ day: to, probability: 1 }], earliest: from, most };
}

/** How much of its food is what is given for rearing: 1 in the nest, falling to 0 with independence. */
export function rearingPart({ fledging, independence }: FeedFacts, age: number): number {
  if (age < fledging) return 1;
  return Math.max(0, (independence - age) / (independence - fledging));
}

/** What one bird eats of a food as reckoned, g, made to agree with what the keeper measured. */
export type Correct = (food: Food, grams: Amount) => Amount;

/** What it eats on a day, g; the most as if it hatched as early as it can. */
export function mouthFoods({ facts, hatches, earliest, most }: Mouth, day: Day, correct: Correct): Foods {
  const early = youngFoods(facts, day - earliest, correct);
  const weighed = hatches.map(({ day: hatched, probability }) => ({
    foods: youngFoods(facts, day - hatched, correct),
    probability,
  }));
  return foodsOf((food) => {
    const expected = sum(weighed.map(({ foods, probability }) => times(foods[food], probability)));
    return { ...expected, high: Math.max(expected.high, most * early[food].high) };
  });
}

/** What a parent eats, g, that does `part` of what nestlings ask. */
export function parentFoods(facts: FeedFacts, { need, part }: Rearing, correct: Correct): Foods {
  const diet = blend(rearingDiet('parents', need ?? 'no'), MAINTENANCE, part);
  return corrected(gramsFor(adultNeed(facts.mass), diet), correct);
}

/** What a bird eats that rears nobody, g. */
export function adultFoods(facts: FeedFacts): Foods {
  return gramsFor(adultNeed(facts.mass), MAINTENANCE);
}

function youngFoods(facts: FeedFacts, age: number, correct: Correct): Foods {
  return age < 0 ? NO_FOOD : corrected(gramsFor(youngNeed(facts, age), youngDiet(facts, age)), correct);
}

function corrected(foods: Foods, correct: Correct): Foods {
  return foodsOf((food) => correct(food, foods[food]));
}

function youngDiet(facts: FeedFacts, age: number): Diet {
  return blend(rearingDiet('young', facts.liveFood ?? 'no'), MAINTENANCE, rearingPart(facts, age));
}

/** Energy a day: the nestling's curve, then in a straight line to an adult's by independence; kJ. */
export function youngNeed(facts: FeedFacts, age: number): Amount {
  const { nestling, fledging, independence, mass } = facts;
  const inNest = nestling[age];
  if (inNest !== undefined) return nestlingNeed(inNest);
  const adult = adultNeed(mass);
  const last = nestlingNeed(nestling.at(-1) ?? adult.likely);
  const part = Math.min(1, (age - fledging + 1) / (independence - fledging + 1));
  return sum([times(last, 1 - part), times(adult, part)]);
}

/** How many are there on a day: those expected, and the most. */
export function mouthsThere(mouths: readonly Mouth[], day: Day): { expected: number; most: number } {
  return {
    expected: sumBy(mouths, (mouth) => hatchedBy(mouth, day)),
    most: sumBy(mouths, ({ earliest, most }) => (earliest <= day ? most : 0)),
  };
}

function hatchedBy({ hatches }: Mouth, day: Day): number {
  return sumBy(hatches, ({ day: on, probability }) => (on <= day ? probability : 0));
}

/** What rearing asks of a family’s parents on a day. */
export interface Rearing {
  /** From 0, nobody to rear, to 1: nestlings, or live food put out before the hatch. */
  part: number;
  /** The strongest need of live food among those that are reared. */
  need: LiveFood | null;
}

const NEEDS: readonly (LiveFood | null)[] = ['required', 'advised', 'helpful', 'no'];

export function rearingOf(mouths: readonly Mouth[], day: Day): Rearing {
  const reared = mouths
    .map((mouth) => ({ facts: mouth.facts, part: partOn(mouth, day) }))
    .filter(({ part }) => part > 0);
  const need = NEEDS.find((each) => reared.some(({ facts }) => facts.liveFood === each)) ?? null;
  return { part: Math.max(0, ...reared.map(({ part }) => part)), need };
}

/** From its lead days before the earliest hatching on, as for a nestling; then as long as the youngest may be fed. */
function partOn(mouth: Mouth, day: Day): number {
  if (day < mouth.earliest - mouth.facts.lead) return 0;
  return rearingPart(mouth.facts, day - latest(mouth));
}

const latest = ({ hatches }: Mouth): Day => Math.max(...hatches.map(({ day }) => day));

/** Whether live food is put out for it on a day, and the mass in g of the smallest that it may be then. */
export function smallestOn(mouth: Mouth, day: Day): number | null {
  const { facts } = mouth;
  if ((facts.liveFood ?? 'no') === 'no' || partOn(mouth, day) === 0) return null;
  return facts.massAt(Math.max(0, day - latest(mouth)));
}
