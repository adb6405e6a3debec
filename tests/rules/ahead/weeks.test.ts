import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatDay, weekday } from '../../../src/days.ts';
import { countBy, weekly, weeksFrom, youngBySpecies, youngIn } from '../../../src/rules/ahead/weeks.ts';
import { day, type Files, room } from '../../rooms.ts';
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
  const files = { A: layingPair('A', 5), B: layingPair('B', 4).replace('zebra finch', 'star finch') };
  const stand = (on = '2026-03-10', more: Files = {}, number = 12) => {
    const stood = room({ ...files, ...more }, on);
    return { courses: futures(stood), weeks: weeksFrom(stood.day, number) };
  };

  it('of all weeks together are those of each', () => {
    const { courses, weeks } = stand();
    const each = weekly(courses, weeks, DRAWS);
    const all = youngIn(courses, { from: 0, to: weeks.at(-1)?.to ?? 0 }, DRAWS);
    for (const of of ['hatching', 'fledging', 'independent'] as const) {
      expect(each.reduce((sum, week) => sum + week[of].mean, 0)).toBeCloseTo(all[of].mean, 9);
    }
    expect(all.hatching.mean).toBeGreaterThan(all.fledging.mean);
    expect(all.fledging.mean).toBeGreaterThan(all.independent.mean);
  });

  it('of all species together are those of each, eggs and clutches told', () => {
    const { courses, weeks } = stand();
    const species = youngBySpecies(courses, weeks, DRAWS);
    expect(
      species.map(({ species: name, eggs, chicks, clutches }) => [name, eggs, chicks, clutches]),
    ).toContainEqual(['zebra finch', 5, 0, 1]);
    expect(species.reduce((sum, one) => sum + one.hatching.mean, 0)).toBeCloseTo(
      youngIn(courses, { from: 0, to: weeks.at(-1)?.to ?? 0 }, DRAWS).hatching.mean,
      9,
    );
  });

  it('are told species by species: eggs that were seen, chicks, and the clutches they are of', () => {
    const { courses, weeks } = stand('2026-03-18', {
      A: layingPair('A', 5, ['{date: 2026-03-17, hatched: 3}']),
      C: '\npair: C\nspecies: star finch\nlog:\n  - {date: 2026-03-17, clutch: 1, laid: 1}\n  - {date: 2026-03-18, laid: 1}\n',
    });
    const told = youngBySpecies(courses, weeks, DRAWS).map((one) => [
      one.species,
      one.eggs,
      one.chicks,
      one.clutches,
    ]);
    // Of the star finches’ second clutch more eggs are expected, but two have been seen.
    expect(told.sort()).toEqual([
      ['star finch', 6, 0, 2],
      ['zebra finch', 2, 3, 1],
    ]);
  });

  it('of the species with the most young come first, those of none by name', () => {
    const many = layingPair('Z', 1).replace('zebra finch', 'lavender waxbill');
    const order = (on: string, number: number) => {
      const { courses, weeks } = stand(on, { Z: many }, number);
      return youngBySpecies(courses, weeks, DRAWS).map(({ species }) => species);
    };
    expect(order('2026-03-10', 12)).toEqual(['zebra finch', 'star finch', 'lavender waxbill']);
    expect(order('2026-03-10', 1)).toEqual(['lavender waxbill', 'star finch', 'zebra finch']);
    const most = {
      Z: layingPair('Z', 6).replace('zebra finch', 'lavender waxbill'),
      B: layingPair('B', 1).replace('zebra', 'star'),
    };
    const last = stand('2026-03-10', most);
    expect(youngBySpecies(last.courses, last.weeks, DRAWS)[0]?.species).toBe('lavender waxbill');
    const { courses, weeks } = stand('2026-03-10', { Z: many.replace('species: lavender waxbill\n', '') }, 1);
    expect(youngBySpecies(courses, weeks, DRAWS).map(({ species }) => species)[0]).toBeNull();
  });

  it('fall into the week of their day, from Monday to Sunday, and none into a week that is not looked at', () => {
    const { courses, weeks } = stand('2026-03-10', {}, 3);
    const days = courses.map(({ hatched }) => hatched);
    const each = weekly(courses, weeks, DRAWS).map(({ from, to, hatching }) => {
      const inWeek = days.flatMap((all) => [...all]).filter((on) => on >= from && on <= to);
      return hatching.mean - inWeek.length / DRAWS;
    });
    expect(each).toEqual(Array(4).fill(expect.closeTo(0, 9)));
  });

  it('between two days are those of both days and of all between', () => {
    const days = [10, 11, 12, 13, 14].map((on) => Int32Array.of(on));
    const between = (from: number, to: number) => countBy(days, { from, to }, 1)[0];
    expect([between(11, 13), between(10, 10), between(14, 20), between(15, 20)]).toEqual([3, 1, 1, 0]);
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
    const { courses, weeks } = stand();
    for (const week of weekly(courses, weeks, DRAWS)) {
      for (const { low, high, mean } of [week.hatching, week.fledging, week.independent]) {
        expect(low).toBeLessThanOrEqual(high);
        expect(mean).toBeGreaterThanOrEqual(0);
        expect(low).toBeGreaterThanOrEqual(0);
      }
    }
  });
});
