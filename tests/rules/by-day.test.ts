import { expect, it } from 'vitest';
import { byDay } from '../../src/rules/by-day.ts';

it('gathers looks by day, oldest first, and keeps the order of a day', () => {
  const seen = [
    { day: 3, saw: 'full' },
    { day: 1, saw: 'thin' },
    { day: 3, saw: 'empty' },
  ];
  expect(byDay(seen)).toEqual([
    { day: 1, all: [{ day: 1, saw: 'thin' }] },
    { day: 3, all: [seen[0], seen[2]] },
  ]);
  expect(byDay([])).toEqual([]);
});
