import { expect, it } from 'vitest';
import { formatTime } from '../../../src/journal/grammar/time-text.ts';
import { feedingHours } from '../../../src/rules/feed/hours.ts';

const said = { from: 360, to: 1200, every: 120, soak: 600, sprout: 2160 };
const times = (settings: Parameters<typeof feedingHours>[0]) =>
  feedingHours(settings).portions.map(formatTime).join(' ');

it('portions are given from the first hour to the last', () => {
  expect(times(said)).toBe('06:00 08:00 10:00 12:00 14:00 16:00 18:00 20:00');
  expect(times({ ...said, every: 180 })).toBe('06:00 09:00 12:00 15:00 18:00');
  expect(feedingHours(said)).toMatchObject({ soak: 600, sprout: 2160, assumed: [] });
});

it('an interval longer than the day is one portion', () => {
  expect(times({ ...said, every: 1200 })).toBe('06:00');
  expect(times({ ...said, to: 360 })).toBe('06:00');
});

it('where the room says nothing, every two hours from lights-on at seven, and it is named as taken', () => {
  expect(times(null)).toBe('07:00 09:00 11:00 13:00 15:00 17:00 19:00');
  expect(feedingHours(null).assumed).toEqual(['from', 'to', 'every', 'soak', 'sprout']);
  // Soaked over night, sprouted for a day.
  expect(feedingHours(null)).toMatchObject({ soak: 12 * 60, sprout: 24 * 60 });
  expect(feedingHours({ ...said, every: null }).assumed).toEqual(['every']);
});
