import { describe, expect, it } from 'vitest';
import { formatDay } from '../../../src/days.ts';
import { ALL_OUT, FOUR_EGGS, hillFinches, lines, stands, THREE_CHICKS } from './hill-finch.ts';

/** The lines of a task on a morning, with the days that it shows. */
const shown = (log: string, task: string, on: string, days = 0, but: Record<string, string> = {}) =>
  lines(hillFinches(log, but), task, on, days).map(
    ({ from, to, state }) => `${formatDay(from)} … ${to === null ? '' : formatDay(to)} ${state}`,
  );

describe('a task that needs a look', () => {
  // Four hatched 13 … 15 March: rings on from 13 + 7 − 1 to 15 + 8, that is 19 … 23 March.
  const found = `${FOUR_EGGS}date: 2026-03-15, after: 2026-03-12, hatched: 4`;

  it('promises no day on which the nest is left alone', () => {
    // Out at 12 d at the earliest: left alone from 23 March on.
    const early = { fledging: '12-14' };
    expect(shown(found, 'ring', '2026-03-20', 0, early)).toEqual(['2026-03-19 … 2026-03-22 now']);
    expect(shown(found, 'ring', '2026-03-22', 0, early)).toEqual(['2026-03-19 … 2026-03-22 now']);
    expect(shown(found, 'ring', '2026-03-23', 0, early)).toEqual([]);
  });

  it('is coming also where its first days are those around hatching', () => {
    // Rings at 2 d, so one day before the looks that a hatching allows, 15 and 16 March.
    expect(shown(found, 'ring', '2026-03-15', 7, { 'ring-age': '2-4' })).toEqual([
      '2026-03-17 … 2026-03-19 coming',
    ]);
  });

  it('comes up for a chick that hatched after the others, though these can be older than was seen', () => {
    const log = `${FOUR_EGGS}date: 2026-03-15, after: 2026-03-12, hatched: 3\ndate: 2026-03-16, hatched: 1`;
    // Out at 15 d at the earliest: six days before are 22 March, when rings of the last just begin to fit.
    expect(stands(hillFinches(log, { fledging: '15-18' }), 'ring', '2026-03-16', '2026-03-30')).toEqual([
      '03-19 … 03-21 now',
      '03-22 … 03-23 now now',
    ]);
  });
});

describe('a nest in which the next clutch lies', () => {
  // The young leave on 5 April at 20–22 d: left alone from 29 March on. The next clutch is due for the lamp on 31 March.
  it('is left alone for the young that are still in it, the other of two nests is not', () => {
    const next = (site: string) =>
      `${THREE_CHICKS.replaceAll('laid: 1', 'laid: 1, site: left')}
       date: 2026-03-24, clutch: 2, ${site}laid: 1
       date: 2026-03-25, clutch: 2, laid: 1
       date: 2026-03-26, clutch: 2, laid: 1, sitting: both`;
    const lamp = (site: string) => stands(hillFinches(next(site)), 'candle', '2026-03-28', '2026-04-04');
    expect(lamp('site: right, ')).toEqual(['03-31 … 04-01 now', '04-02 … 04-03 late']);
    expect(lamp('site: left, ')).toEqual([]);
    expect(lamp('')).toEqual([]);
  });

  // The young left on 5 April, e4 did not hatch; ten nights later its fate is asked.
  it('is left alone while that hatches, also for what the last brood left over', () => {
    const next =
      'date: 2026-04-06, clutch: 2, laid: 1\ndate: 2026-04-07, laid: 1\ndate: 2026-04-08, laid: 1, sitting\ndate: 2026-04-19, after: 2026-04-18, hatched: 3';
    // 8 April + 11 = 19 April, and two days before: from 17 April on, to the day after.
    expect(stands(hillFinches(`${ALL_OUT}${next}`), 'unhatched', '2026-04-10', '2026-04-24')).toEqual([
      '04-15 … 04-16 now',
      '04-21 … 04-24 late',
    ]);
    expect(stands(hillFinches(ALL_OUT), 'unhatched', '2026-04-10', '2026-04-24')).toEqual([
      '04-15 … 04-18 now',
      '04-19 … 04-24 late',
    ]);
  });
});

describe('an incubator and the nest of its pair', () => {
  // Four eggs are sat on or warm from 3 or 4 March; their hatch is looked for 14 … 17 March, hands off from 12 March on.
  it('are opened each for itself: the lamp shows the next clutch while chicks hatch in the incubator', () => {
    const next = `${FOUR_EGGS}date: 2026-03-04, set: {incubator: all}
      date: 2026-03-08, clutch: 2, laid: 3, sitting`;
    expect(shown(next, 'candle', '2026-03-13')).toEqual(['2026-03-13 … 2026-03-14 now']);
  });

  it('are opened each for itself: the lamp shows an egg that was set later while the nest is left alone', () => {
    const late = `${FOUR_EGGS}date: 2026-03-05, pulled: e4\ndate: 2026-03-08, set: {incubator: e4}`;
    expect(shown(late, 'candle', '2026-03-13')).toEqual(['2026-03-12 … 2026-03-13 now']);
  });
});
