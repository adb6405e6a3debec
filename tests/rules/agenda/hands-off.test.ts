import { describe, expect, it } from 'vitest';
import { formatDay } from '../../../src/days.ts';
import { inHandsOffDays } from '../../../src/rules/agenda/hands-off.ts';
import { day } from '../../rooms.ts';
import { mixedNest, pair, view } from '../warnings/warned.ts';
import { ALL_OUT, brood, FOUR_EGGS, hillFinches, THREE_CHICKS } from './hill-finch.ts';

/** The first and last of the days on which the nest is left alone, as known on each of them. */
function handsOff(log: string, from: string, to: string, but: Record<string, string> = {}): string[] {
  const runs: [number, number][] = [];
  for (let on = day(from); on <= day(to); on++) {
    if (!inHandsOffDays(brood(hillFinches(log, but), formatDay(on)), on)) continue;
    const run = runs.at(-1);
    if (run?.[1] === on - 1) run[1] = on;
    else runs.push([on, on]);
  }
  return runs.map((run) => run.map((on) => formatDay(on).slice(5)).join(' … '));
}

describe('around hatching', () => {
  it('from two days before the window to a day after it, while nobody is out', () => {
    // The window is 14 … 17 March.
    expect(handsOff(FOUR_EGGS, '2026-03-05', '2026-03-31')).toEqual(['03-12 … 03-18']);
  });

  it('until the day after the first chick', () => {
    expect(handsOff(THREE_CHICKS, '2026-03-05', '2026-03-28')).toEqual(['03-12 … 03-16']);
  });

  it('not for eggs that are all clear', () => {
    expect(
      handsOff(`${FOUR_EGGS}date: 2026-03-09, candled: {clear: all}`, '2026-03-10', '2026-03-31'),
    ).toEqual([]);
  });
});

describe('before fledging', () => {
  it('from six days before the youngest usual age until the last has left', () => {
    // 15 March + 20 − 6 = 29 March; all leave on 5 April.
    expect(handsOff(ALL_OUT, '2026-03-18', '2026-04-10')).toEqual(['03-29 … 04-04']);
  });

  it('counts from the eldest', () => {
    const log = `${THREE_CHICKS}date: 2026-03-17, after: 2026-03-16, hatched: e4`;
    expect(handsOff(log, '2026-03-18', '2026-04-01')).toEqual(['03-29 … 04-01']);
  });

  it('by the age of each species where guests are reared', () => {
    // Lavender waxbills leave from 17 d on, Bengalese finches from 21 d: six days before are 25 and 29 March.
    const alone = (on: string) =>
      view(mixedNest(), on).broods.some((nest) => nest.pair.id === 'BF-1' && inHandsOffDays(nest, day(on)));
    expect(['2026-03-24', '2026-03-25'].map(alone)).toEqual([false, true]);
  });

  it('by the age of fledging alone where nobody knows the age for rings', () => {
    // 15 March + 12 − 6 = 21 March.
    expect(handsOff(THREE_CHICKS, '2026-03-18', '2026-03-26', { fledging: '12-14', 'ring-age': '' })).toEqual(
      ['03-21 … 03-26'],
    );
  });

  it('for the young that are left behind as well', () => {
    const log = `${THREE_CHICKS}date: 2026-04-04, fledged: [c1, c2]\ndate: 2026-04-08, fledged: c3`;
    expect(handsOff(log, '2026-03-18', '2026-04-12')).toEqual(['03-29 … 04-07']);
  });

  it('later where the young leave early, so that rings still go on', () => {
    // Out at 12 d: six days before is day 6, but rings go on up to day 8, so day 9, 24 March.
    expect(handsOff(THREE_CHICKS, '2026-03-18', '2026-03-26', { fledging: '12-14' })).toEqual([
      '03-24 … 03-26',
    ]);
  });

  it('but two days before the earliest in any case', () => {
    // Out at 9 d: day 7, 22 March, though rings go on up to day 8.
    expect(handsOff(THREE_CHICKS, '2026-03-18', '2026-03-24', { fledging: '9-11' })).toEqual([
      '03-22 … 03-24',
    ]);
  });

  it('later where the chicks can have hatched days before they were found, so that rings still go on', () => {
    // Hatched 13 … 15 March. Six days before the earliest fledging are 13 + 10 = 23 March, but of one that hatched on
    // the 15th the rings go on up to day 8, 23 March.
    const log = `${FOUR_EGGS}date: 2026-03-15, after: 2026-03-12, hatched: 4`;
    expect(handsOff(log, '2026-03-17', '2026-03-26', { fledging: '16-20' })).toEqual(['03-24 … 03-26']);
    // Two days before the earliest, 13 + 10, in any case.
    expect(handsOff(log, '2026-03-17', '2026-03-26', { fledging: '12-14' })).toEqual(['03-23 … 03-26']);
  });

  it('not where nobody knows when the species leaves the nest', () => {
    expect(handsOff(THREE_CHICKS, '2026-03-18', '2026-04-10', { fledging: '' })).toEqual([]);
    const unknown = brood({ 'HF-1': pair('HF-1', 'ridge finch', THREE_CHICKS) }, '2026-04-01');
    expect(inHandsOffDays(unknown, day('2026-04-01'))).toBe(false);
  });
});
