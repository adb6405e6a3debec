import { describe, expect, it } from 'vitest';
import { byDay, survivalOf } from '../../../src/rules/season/survival.ts';
import type { IntervalLife } from '../../../src/statistics/interval-censored.ts';

const FOREVER = Number.POSITIVE_INFINITY;
const dead = (...ages: number[]): IntervalLife[] =>
  ages.map((age) => ({ entry: -1, left: age - 1, right: age }));
const alive = (count: number, age: number): IntervalLife[] =>
  Array.from({ length: count }, () => ({ entry: -1, left: age, right: FOREVER }));

describe('survival of chicks', () => {
  it('of nobody is nothing', () => {
    expect(survivalOf([])).toEqual({ rows: [], estimated: false, followed: 0, danger: null });
  });

  it('has a row for each age at which any died', () => {
    const { rows, estimated, followed } = survivalOf([...dead(0, 3), ...alive(2, 30)]);
    expect(
      rows.map(({ from, time, atRisk, died, surviving }) => [from, time, atRisk, died, surviving]),
    ).toEqual([
      [0, 0, 4, 1, 0.75],
      [3, 3, 3, 1, 0.5],
    ]);
    expect([estimated, followed]).toEqual([false, 4]);
  });

  it('is estimated where a death lay between looks more than a day apart', () => {
    const found = survivalOf([{ entry: -1, left: 2, right: 5 }, ...alive(3, 30)]);
    expect(found.estimated).toBe(true);
    expect(found.rows).toMatchObject([{ from: 3, time: 5, surviving: expect.closeTo(0.75, 9) }]);
  });

  it('takes the day it was found where one day is needed', () => {
    expect(byDay({ entry: -1, left: 2, right: 5 })).toEqual({ entry: -1, time: 5, died: true });
    expect(byDay({ entry: -1, left: 9, right: FOREVER })).toEqual({ entry: -1, time: 9, died: false });
  });
});

describe('the days to watch', () => {
  it('are the shortest stretch with half of the deaths', () => {
    const { danger } = survivalOf([...dead(1, 4, 5, 5, 20), ...alive(10, 40)]);
    expect(danger).toEqual({ from: 4, to: 5, died: 3, of: 5, atRisk: 14 });
  });

  it('are the ones with more deaths of two that are as short, the earlier of two alike', () => {
    const days = (...ages: number[]) => {
      const { danger } = survivalOf([...dead(...ages), ...alive(9, 40)]);
      return danger && [danger.from, danger.to, danger.died];
    };
    expect(days(1, 1, 2, 2, 3, 3, 3)).toEqual([2, 3, 5]);
    expect(days(1, 1, 2, 2, 3, 3)).toEqual([1, 2, 4]);
    // A longer one with more deaths is no better warning.
    expect(days(1, 2, 2, 2, 5, 5, 5)).toEqual([1, 2, 4]);
  });

  it('are at the most a week', () => {
    const days = (...ages: number[]) => survivalOf([...dead(...ages), ...alive(9, 50)]).danger;
    expect(days(3, 6, 9, 20, 30)).toMatchObject({ from: 3, to: 9 });
    expect(days(3, 6, 10, 20, 30)).toBeNull();
  });

  it('hold half of the deaths where these are even', () => {
    const { danger } = survivalOf([...dead(4, 4, 4, 15, 25, 35), ...alive(9, 50)]);
    expect(danger).toMatchObject({ from: 4, to: 4, died: 3, of: 6 });
  });

  it('are not named where four died, or where deaths lie far apart', () => {
    expect(survivalOf([...dead(3, 3, 3, 3), ...alive(5, 40)]).danger).toBeNull();
    expect(survivalOf([...dead(1, 10, 19, 28, 37), ...alive(5, 40)]).danger).toBeNull();
  });
});
