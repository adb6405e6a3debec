import { expect, test } from 'vitest';
import { durationsFrom, learnedDurations } from '../../src/rules/durations.ts';
import { bookDuration } from '../../src/rules/forecast/duration.ts';
import { room } from '../rooms.ts';

const range = { low: 11, high: 13 };

test('without own clutches a species takes what the book says', () => {
  expect(durationsFrom([])('incubation', 'lavender waxbill', range)).toEqual(bookDuration(range));
});

test('a species learns from its own clutches only, and sitting only from sitting', () => {
  const files = {
    'LW-1': `
      pair: LW-1
      species: lavender waxbill
      log:
        - {date: 2026-03-04, after: 2026-03-03, clutch: 1, laid: 1, sitting}
        - {date: 2026-03-17, after: 2026-03-16, hatched: 1}
    `,
  };
  const durations = learnedDurations(room(files, '2026-06-01'));
  expect(durations('incubation', 'lavender waxbill', range).n).toBe(1);
  expect(durations('incubation', 'star finch', range).n).toBe(0);
  expect(durations('fledging', 'lavender waxbill', range).n).toBe(0);
});
