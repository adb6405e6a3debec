import { expect, test } from 'vitest';
import { needsLiveFood, takesLiveFood } from '../../src/species/live-food.ts';
import type { LiveFood, Profile } from '../../src/species/profile.ts';

const rearedOn = (value: LiveFood): Pick<Profile, 'liveFood'> => ({
  liveFood: { value, source: 'invented for this test' } as Profile['liveFood'],
});

test.each<[LiveFood, boolean, boolean]>([
  ['required', true, true],
  ['advised', true, true],
  ['helpful', false, true],
  ['no', false, false],
])('young for which live food is %s need it: %s, and are given it: %s', (value, needs, takes) => {
  expect([needsLiveFood(rearedOn(value)), takesLiveFood(rearedOn(value))]).toEqual([needs, takes]);
});

test('of a species that nobody knows no live food is asked for', () => {
  expect([needsLiveFood(null), takesLiveFood(null)]).toEqual([false, false]);
  expect([needsLiveFood({ liveFood: null }), takesLiveFood({ liveFood: null })]).toEqual([false, false]);
});
