import { expect, test } from 'vitest';
import { profileFromData } from '../../src/species/profile.ts';
import { allShipped } from '../../src/species/shipped.ts';
import { inWholeDays } from '../../src/species/whole-days.ts';

const profile = (data: Record<string, string>) =>
  profileFromData({ species: 'hill finch', ...data }, 'hill-finch').profile;

test('parts of days are widened to whole ones, never to fewer than were written', () => {
  const whole = inWholeDays(profile({ incubation: '12.3-13.6', 'sitting-from': '2.5' }));
  expect(whole.incubation?.value).toEqual({ low: 12, high: 14 });
  expect(whole.sittingFrom?.value).toEqual({ low: 2, high: 3 });
});

test('a first egg is never egg 0', () => {
  expect(inWholeDays(profile({ 'sitting-from': '0.5' })).sittingFrom?.value).toEqual({ low: 1, high: 1 });
});

test('what is measured keeps its parts: rings in mm, birds in g', () => {
  const written = profile({ 'ring-size': '2.0-2.3', 'adult-mass': '8.5' });
  expect(inWholeDays(written)).toBe(written);
});

test('shipped profiles count in whole days', () => {
  for (const shipped of allShipped()) expect(inWholeDays(shipped), shipped.species).toBe(shipped);
});
