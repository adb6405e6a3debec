import { describe, expect, it } from 'vitest';
import type { Amount } from '../../../src/rules/feed/amount.ts';
import { adultNeed, nestlingNeed } from '../../../src/rules/feed/energy.ts';
import { factsOf } from '../../../src/rules/feed/facts.ts';
import { NO_FOOD } from '../../../src/rules/feed/foods.ts';
import {
  adultFoods,
  hatchedMouth,
  type Mouth,
  mouthFoods,
  mouthsThere,
  parentFoods,
  rearingOf,
  rearingPart,
  smallestOn,
  youngNeed,
} from '../../../src/rules/feed/mouths.ts';
import { findSpecies } from '../../../src/species/find.ts';

const waxbill = factsOf()(findSpecies('lavender waxbill', []));
const dove = factsOf()(findSpecies('diamond dove', []));
const asReckoned = (_food: string, grams: Amount) => grams;
const chick = hatchedMouth(waxbill, { from: 100, to: 100 });
const live = (mouth: Mouth, day: number) => mouthFoods(mouth, day, asReckoned).live;

describe('a chick', () => {
  it('eats nothing before it hatched', () => {
    expect(mouthFoods(chick, 99, asReckoned)).toEqual(NO_FOOD);
    expect(live(chick, 100).low).toBeGreaterThan(0);
  });

  it('gets live food in full in the nest, less from day to day after it, none once independent', () => {
    expect([0, 18, 19].map((age) => rearingPart(waxbill, age))).toEqual([1, 1, 1]);
    const after = Array.from({ length: 22 }, (_, i) => live(chick, 100 + 19 + i).likely);
    expect(after.at(-1)).toBe(0);
    expect(after.slice(10)).toEqual([...after.slice(10)].sort((a, b) => b - a));
    expect(rearingPart(waxbill, 29.5)).toBeCloseTo(0.5, 12);
  });

  it('of a species that needs none gets none', () => {
    expect(live(hatchedMouth(dove, { from: 100, to: 100 }), 105).high).toBe(0);
  });

  it('comes to an adult’s energy without a jump', () => {
    const need = Array.from({ length: 45 }, (_, age) => youngNeed(waxbill, age).likely);
    for (let age = 19; age < 45; age++) {
      expect(Math.abs((need[age] as number) / (need[age - 1] as number) - 1)).toBeLessThan(0.08);
    }
    expect(need.at(-1)).toBe(need.at(-2));
  });

  it('needs in the nest what its curve says, half-way to an adult’s half-way to independence, and an adult’s at the end', () => {
    expect(youngNeed(waxbill, 5)).toEqual(nestlingNeed(waxbill.nestling[5] as number));
    const adult = adultNeed(waxbill.mass).likely;
    const grown = nestlingNeed(waxbill.nestling.at(-1) as number).likely;
    // Out at 19 days and independent at 40 (shipped profile): 29 is the eleventh of 22 steps.
    expect(youngNeed(waxbill, 29).likely).toBeCloseTo((adult + grown) / 2, 9);
    expect(youngNeed(waxbill, 39).likely).toBeCloseTo((21 * adult + grown) / 22, 9);
    expect(youngNeed(waxbill, 40)).toEqual(adultNeed(waxbill.mass));
  });

  it('whose hatching is not known to the day is at most as old as it can be', () => {
    const unsure = hatchedMouth(waxbill, { from: 97, to: 100 });
    expect(live(unsure, 103).likely).toBeCloseTo(live(chick, 103).likely, 12);
    expect(live(unsure, 103).high).toBeCloseTo(live(chick, 106).high, 12);
  });

  it('that stands for young heard but not counted may be as many as are usual', () => {
    const heard = hatchedMouth(waxbill, { from: 100, to: 100 }, 5);
    expect(live(heard, 103).high).toBeCloseTo(5 * live(chick, 103).high, 12);
    expect(mouthsThere([heard, chick], 103)).toEqual({ expected: 2, most: 6 });
  });
});

describe('an egg', () => {
  const egg: Mouth = {
    facts: waxbill,
    hatches: [
      { day: 100, probability: 0.25 },
      { day: 102, probability: 0.5 },
    ],
    earliest: 100,
    most: 1,
  };

  it('counts by its chance, and at most as hatched on its earliest day', () => {
    expect(live(egg, 101).likely).toBeCloseTo(0.25 * live(chick, 101).likely, 12);
    expect(live(egg, 101).high).toBeCloseTo(live(chick, 101).high, 12);
    expect(mouthsThere([egg], 101)).toEqual({ expected: 0.25, most: 1 });
    expect(mouthsThere([egg], 99)).toEqual({ expected: 0, most: 0 });
    expect(mouthsThere([egg], 100)).toEqual({ expected: 0.25, most: 1 });
    expect(mouthsThere([egg], 102)).toEqual({ expected: 0.75, most: 1 });
  });

  it('makes live food stand ready the lead days before its earliest day, not sooner', () => {
    expect(rearingOf([egg], 97)).toEqual({ part: 0, need: null });
    expect(rearingOf([egg], 98)).toEqual({ part: 1, need: 'required' });
  });

  it('asks for what a hatchling can swallow until the last day on which it may hatch', () => {
    expect(smallestOn(egg, 97)).toBeNull();
    expect(smallestOn(egg, 98)).toBeCloseTo(waxbill.massAt(0), 12);
    expect(smallestOn(egg, 102)).toBeCloseTo(waxbill.massAt(0), 12);
    expect(smallestOn(egg, 104)).toBeCloseTo(waxbill.massAt(2), 12);
    // 40 days after the last day on which it may hatch it feeds itself (shipped profile).
    expect(smallestOn(egg, 141)).not.toBeNull();
    expect(smallestOn(egg, 142)).toBeNull();
  });

  it('asks for no live food of any size where its species needs none, or nobody knows', () => {
    expect(smallestOn(hatchedMouth(dove, { from: 100, to: 100 }), 105)).toBeNull();
    expect(smallestOn(hatchedMouth(factsOf()(null), { from: 100, to: 100 }), 105)).toBeNull();
  });
});

describe('parents', () => {
  it('take a little live food themselves while they rear, the strongest need going before', () => {
    const mixed = [hatchedMouth(dove, { from: 100, to: 100 }), chick];
    expect(rearingOf(mixed, 105)).toEqual({ part: 1, need: 'required' });
    const foods = parentFoods(waxbill, rearingOf(mixed, 105), asReckoned);
    expect(foods.live.likely).toBeGreaterThan(0.3);
    expect(foods.live.likely).toBeLessThan(1.5);
  });

  it('eat as birds that rear nobody when there is nobody to rear', () => {
    expect(parentFoods(waxbill, { part: 0, need: null }, asReckoned)).toEqual(adultFoods(waxbill));
  });
});

it('what a keeper measured goes before what is reckoned', () => {
  const half = mouthFoods(chick, 105, (_food, { likely }) => ({
    low: likely / 2,
    likely: likely / 2,
    high: likely / 2,
  }));
  expect(half.live.high).toBeCloseTo(live(chick, 105).likely / 2, 12);
});
