import { expect, it } from 'vitest';
import { eggVolume, freshMass } from '../../../src/rules/incubator/egg-size.ts';

it('an egg twice as long has twice the volume, one twice as broad four times', () => {
  const egg = eggVolume({ length: 15, breadth: 11 });
  expect(eggVolume({ length: 30, breadth: 11 }) / egg).toBeCloseTo(2, 12);
  expect(eggVolume({ length: 15, breadth: 22 }) / egg).toBeCloseTo(4, 12);
});

it('fresh eggs are a little heavier than water', () => {
  const size = { length: 15, breadth: 11 };
  expect(freshMass(size) / eggVolume(size)).toBeCloseTo(1.0745, 4);
});
