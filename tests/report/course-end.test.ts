import { describe, expect, it } from 'vitest';
import { formatDay } from '../../src/days.ts';
import { LONGEST, lastDrawn } from '../../src/report/course-end.ts';
import { day } from '../rooms.ts';
import { FOUR, story, waxbills } from './seasons.ts';

function last(log: string, on: string): string {
  const [clutch] = story('LW-1', { 'LW-1': waxbills(log) }, on).clutches;
  return clutch === undefined ? 'none' : formatDay(lastDrawn(clutch, day(on)));
}

describe('the last day that is drawn of a clutch', () => {
  const hatched = `${FOUR}\n date: 2026-03-15, checked\n date: 2026-03-16, hatched: [e1, e2, e3, e4]`;
  const flown = `${hatched}\n date: 2026-04-03, fledged: all`;

  it('is the day stood on while it is in course, and the last of it once it is over', () => {
    expect(last(flown, '2026-04-10')).toBe('2026-04-10');
    expect(last(`${flown}\n date: 2026-04-22, independent: all`, '2026-07-01')).toBe('2026-04-22');
  });

  // Lavender waxbills feed themselves at 35 to 45 days (species profile).
  it('is that on which young of which nobody wrote so should feed themselves', () => {
    const grown = last(flown, '2026-07-01');
    expect([last(hatched, '2026-07-01'), last(flown, '2026-06-15')]).toEqual([grown, grown]);
    expect(day(grown) - day('2026-03-16')).toBeLessThanOrEqual(50);
    // Told as out of the nest later than that, they were.
    expect(last(`${hatched}\n date: 2026-05-20, fledged: all`, '2026-06-15')).toBe('2026-05-20');
  });

  it('of eggs of which nobody wrote an end is not years away', () => {
    expect(last(FOUR, '2026-04-01')).toBe('2026-04-01');
    expect(last(FOUR, '2028-04-01')).toBe(formatDay(day('2026-03-01') + LONGEST));
  });
});
