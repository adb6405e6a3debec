import { describe, expect, it } from 'vitest';
import { exactly } from '../../../src/rules/feed/amount.ts';
import {
  blend,
  foodNamed,
  foods,
  foodsOf,
  gramsFor,
  MAINTENANCE,
  NO_FOOD,
  rearingDiet,
  SPROUTING_GAIN,
} from '../../../src/rules/feed/foods.ts';

const needs = ['required', 'advised', 'helpful', 'no'] as const;

describe('a diet', () => {
  it.each(needs)('of young whose species’ need is %s is all of their energy', (need) => {
    for (const who of ['young', 'parents'] as const) {
      const parts = foods.map((food) => rearingDiet(who, need)[food].likely);
      expect(parts.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
    }
  });

  it('has the more live food the more the species needs it, and none where it needs none', () => {
    const live = needs.map((need) => rearingDiet('young', need).live.likely);
    expect([...live].sort((a, b) => b - a)).toEqual(live);
    expect(live.at(-1)).toBe(0);
    expect(rearingDiet('young', 'required').live.likely).toBeGreaterThan(0.5);
  });

  // Half to nine tenths of it is live food; two fifths of what is left are egg food.
  it('has the less soft food the more of it is live', () => {
    const { egg, live } = rearingDiet('young', 'required');
    expect([live.low, live.high]).toEqual([0.5, 0.9]);
    expect(egg.low).toBeCloseTo(0.4 * 0.1, 9);
    expect(egg.high).toBeCloseTo(0.4 * 0.5, 9);
  });

  it('between two lies between them', () => {
    const full = rearingDiet('young', 'required');
    expect(blend(full, MAINTENANCE, 1)).toEqual(full);
    expect(blend(full, MAINTENANCE, 0)).toEqual(MAINTENANCE);
    expect(blend(full, MAINTENANCE, 0.25).live.high).toBeCloseTo(full.live.high / 4, 12);
  });
});

it('90 kJ all in dry seed of 12 to 15 kJ a gram are 6 to 7.5 g', () => {
  const { dry, live, egg, sprouted } = gramsFor(exactly(90), MAINTENANCE);
  expect(dry.low).toBeCloseTo(6, 9);
  expect(dry.high).toBeCloseTo(7.5, 9);
  expect([live, egg, sprouted].map(({ high }) => high)).toEqual([0, 0, 0]);
  expect(foodsOf((food) => NO_FOOD[food])).toEqual(NO_FOOD);
});

it('sprouted seed weighs more than the dry seed it came from', () => {
  expect(SPROUTING_GAIN).toBeGreaterThan(1.4);
  expect(SPROUTING_GAIN).toBeLessThan(2.1);
});

it.each([
  ['live food', 'live'],
  ['small mealworms', 'live'],
  ['no live food', null],
  ['sprouted seed', 'sprouted'],
  ['soaked millet', 'sprouted'],
  ['egg food', 'egg'],
  ['eggfood', 'egg'],
  ['dry seed', 'dry'],
  ['millet', 'dry'],
  ['greens', null],
])('a keeper’s `%s` is %s', (kind, food) => {
  expect(foodNamed(kind)).toBe(food);
});
