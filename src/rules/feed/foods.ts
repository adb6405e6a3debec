import type { LiveFood } from '../../species/profile.ts';
import { isLiveFood } from '../agenda/conditions.ts';
import { type Amount, between, exactly, inverse, NOTHING, product } from './amount.ts';

/** What a plan counts; dry seed is always there and only bought. */
export const foods = ['live', 'egg', 'sprouted', 'dry'] as const;
export type Food = (typeof foods)[number];

/** Grams of each food. */
export type Foods = Record<Food, Amount>;

export const NO_FOOD: Foods = { live: NOTHING, egg: NOTHING, sprouted: NOTHING, dry: NOTHING };

/**
 * Metabolisable energy of a gram as it is given, kJ. Live food: from small crickets to mealworms, after Finke 2002, Zoo
 * Biology 21:269 (from memory). The rest from memory: egg food moist, sprouted seed about half water.
 */
const ENERGY: Foods = {
  live: between(4, 9),
  egg: between(7, 12),
  sprouted: between(6, 9),
  dry: between(12, 15),
};

/** A gram of dry seed, drained and sprouted, weighs so many (common practice). */
export const SPROUTING_GAIN = 1.7;

/** Parts of a bird's energy that come from each food; they add up to 1. */
export type Diet = Record<Food, Amount>;

/**
 * The part of their energy that young in the nest get as live food, and that their parents take of it themselves while
 * they rear, by what the profile says of the species' need. Assumed after common practice: nobody has measured it for
 * most of these birds.
 */
const LIVE_SHARE: Record<LiveFood, { young: Amount; parents: Amount }> = {
  required: { young: between(0.5, 0.9), parents: between(0.1, 0.2) },
  advised: { young: between(0.2, 0.5), parents: between(0.05, 0.15) },
  helpful: { young: between(0.05, 0.25), parents: between(0.03, 0.1) },
  no: { young: NOTHING, parents: NOTHING },
};

/** How the energy that is not live food is shared out between egg food and sprouted seed; dry seed is the rest (assumed). */
const SOFT = { young: { egg: 0.4, sprouted: 0.4 }, parents: { egg: 0.1, sprouted: 0.2 } };

/** The diet of whoever rears, or is reared, where live food is given in full. */
export function rearingDiet(who: 'young' | 'parents', need: LiveFood): Diet {
  return softDiet(LIVE_SHARE[need][who], SOFT[who]);
}

/** What a bird eats that rears nobody: dry seed, and what its keeper adds without a plan. */
export const MAINTENANCE: Diet = { ...NO_FOOD, dry: exactly(1) };

function softDiet(live: Amount, { egg, sprouted }: { egg: number; sprouted: number }): Diet {
  // Where much is live food little else is eaten, and the other way round.
  const rest = { low: 1 - live.high, likely: 1 - live.likely, high: 1 - live.low };
  const part = (share: number): Amount => product(rest, exactly(share));
  return { live, egg: part(egg), sprouted: part(sprouted), dry: part(1 - egg - sprouted) };
}

/** Between two diets: `part` 1 is all the first, 0 all the second. */
export function blend(one: Diet, other: Diet, part: number): Diet {
  const mix = (food: Food, end: keyof Amount) => part * one[food][end] + (1 - part) * other[food][end];
  return foodsOf((food) => ({ low: mix(food, 'low'), likely: mix(food, 'likely'), high: mix(food, 'high') }));
}

/** Grams of each food that give a bird this energy in this diet. */
export function gramsFor(energy: Amount, diet: Diet): Foods {
  return foodsOf((food) => product(energy, diet[food], inverse(ENERGY[food])));
}

/** One amount a food. */
export function foodsOf(amount: (food: Food) => Amount): Foods {
  return { live: amount('live'), egg: amount('egg'), sprouted: amount('sprouted'), dry: amount('dry') };
}

/** Which of the foods a keeper’s word means, or null. */
export function foodNamed(kind: string): Food | null {
  if (isLiveFood(kind)) return 'live';
  if (/\b(sprout\w*|soaked|germinated)\b/i.test(kind)) return 'sprouted';
  if (/\begg ?-?food\b/i.test(kind)) return 'egg';
  return /\b(seeds?|millets?)\b/i.test(kind) ? 'dry' : null;
}
