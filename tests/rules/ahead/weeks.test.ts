import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatDay, weekday } from '../../../src/days.ts';
import { weekly, weeksFrom, youngBySpecies, youngIn } from '../../../src/rules/ahead/weeks.ts';
import { day, room } from '../../rooms.ts';
import { DRAWS, futures, layingPair } from './futures.ts';

describe('the weeks ahead', () => {
  it('run from today to the Sunday that covers them, Mondays first (ISO 8601)', () => {
    const said = (from: string, number: number) =>
      weeksFrom(day(from), number).map(({ year, week, from: begin, to }) => [
        year,
        week,
        formatDay(begin),
        formatDay(to),
      ]);
    expect(said('2026-05-17', 1)).toEqual([
      [2026, 20, '2026-05-17', '2026-05-17'],
      [2026, 21, '2026-05-18', '2026-05-24'],
    ]);
    // 28 December 2026 is the Monday of week 53 (ISO 8601: the week belongs to the year of its Thursday).
    expect(said('2026-12-28', 2)).toEqual([
      [2026, 53, '2026-12-28', '2027-01-03'],
      [2027, 1, '2027-01-04', '2027-01-10'],
    ]);
  });

  it('follow one another without a gap, whatever the day', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 40_000 }), fc.integer({ min: 1, max: 99 }), (from, number) => {
        const weeks = weeksFrom(from, number);
        expect(weeks[0]?.from).toBe(from);
        weeks.forEach(({ to }, i) => {
          expect(weekday(to)).toBe(7);
          if (i > 0) expect(weeks[i]?.from).toBe((weeks[i - 1]?.to ?? 0) + 1);
        });
        const last = weeks.at(-1)?.to ?? 0;
        expect(last - from + 1).toBeGreaterThanOrEqual(7 * number);
        expect(last - from + 1).toBeLessThan(7 * number + 7);
      }),
    );
  });
});

describe('young expected', () => {
  const stood = room(
    { A: layingPair('A', 5), B: layingPair('B', 4).replace('zebra finch', 'star finch') },
    '2026-03-10',
  );
  const courses = futures(stood);
  const weeks = weeksFrom(stood.day, 12);

  it('of all weeks together are those of each', () => {
    const each = weekly(courses, weeks, DRAWS);
    const all = youngIn(courses, { from: 0, to: weeks.at(-1)?.to ?? 0 }, DRAWS);
    for (const of of ['hatching', 'fledging', 'independent'] as const) {
      expect(each.reduce((sum, week) => sum + week[of].mean, 0)).toBeCloseTo(all[of].mean, 9);
    }
    expect(all.hatching.mean).toBeGreaterThan(all.fledging.mean);
    expect(all.fledging.mean).toBeGreaterThan(all.independent.mean);
  });

  it('of all species together are those of each, eggs and clutches told', () => {
    const species = youngBySpecies(courses, weeks, DRAWS);
    expect(
      species.map(({ species: name, eggs, chicks, clutches }) => [name, eggs, chicks, clutches]),
    ).toContainEqual(['zebra finch', 5, 0, 1]);
    expect(species.reduce((sum, one) => sum + one.hatching.mean, 0)).toBeCloseTo(
      youngIn(courses, { from: 0, to: weeks.at(-1)?.to ?? 0 }, DRAWS).hatching.mean,
      9,
    );
  });

  it('that should have come earlier count in the first week', () => {
    const unseen = room(
      { A: '\npair: A\nspecies: zebra finch\nlog:\n  - {date: 2026-03-01, clutch: 1, laid: 1, sitting}\n' },
      '2026-03-20',
    );
    const [first, ...later] = weekly(futures(unseen), weeksFrom(unseen.day, 4), DRAWS);
    expect(first?.hatching.mean).toBeGreaterThan(0.4);
    expect(later.every(({ hatching }) => hatching.high === 0)).toBe(true);
  });

  it('have ranges in order', () => {
    for (const week of weekly(courses, weeks, DRAWS)) {
      for (const { low, high, mean } of [week.hatching, week.fledging, week.independent]) {
        expect(low).toBeLessThanOrEqual(high);
        expect(mean).toBeGreaterThanOrEqual(0);
        expect(low).toBeGreaterThanOrEqual(0);
      }
    }
  });
});
