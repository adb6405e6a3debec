import { expect, test } from 'vitest';
import { liveFoodLead, needsLiveFood, takesLiveFood } from '../../src/species/live-food.ts';
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

test('it is on offer as many days before the hatch as the species asks for, two where nobody says', () => {
  const lead = (low: number, high: number): Pick<Profile, 'liveFoodLead'> => ({
    liveFoodLead: { value: { low, high }, source: 'invented for this test' } as Profile['liveFoodLead'],
  });
  expect([lead(3, 3), lead(1, 4), { liveFoodLead: null }, null].map(liveFoodLead)).toEqual([3, 4, 2, 2]);
});
