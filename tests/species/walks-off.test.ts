import { expect, test } from 'vitest';
import { shippedProfile } from '../../src/species/shipped.ts';
import { walksOff } from '../../src/species/walks-off.ts';

// Quails follow the hen from the first day; finches, doves and parrots are fed in the nest for weeks (common practice).
test.each([
  ['king quail', true],
  ['zebra finch', false],
  ['diamond dove', false],
  ['budgerigar', false],
])('young of the %s walk off as they hatch: %s', (name, walks) => {
  const profile = shippedProfile(name);
  expect(profile !== null && walksOff(profile)).toBe(walks);
});
