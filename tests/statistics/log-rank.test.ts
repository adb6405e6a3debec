import { describe, expect, it } from 'vitest';
import { chanceOf, logRank } from '../../src/statistics/log-rank.ts';
import type { Life } from '../../src/statistics/survival.ts';

const dead = (...times: number[]): Life[] => times.map((time) => ({ entry: 0, time, died: true }));
const alive = (...times: number[]): Life[] => times.map((time) => ({ entry: 0, time, died: false }));

describe('two groups compared', () => {
  it('needs deaths, and somebody to compare with', () => {
    expect(logRank([], [])).toBeNull();
    expect(logRank(dead(1, 2), [])).toBeNull();
    expect(logRank(alive(5), alive(9))).toBeNull();
  });

  it('sees no difference between a group and itself', () => {
    expect(logRank(dead(1, 3, 5), dead(1, 3, 5))).toMatchObject({
      observed: 3,
      expected: 3,
      chiSquare: 0,
      p: 1,
    });
  });

  // At 1: two of four die, half of those at risk are ours: expected 1, variance 2·2·2·2 / (16·3) = 1/3.
  it('counts by hand', () => {
    const test = logRank(dead(1, 1), alive(9, 9));
    expect(test).toMatchObject({ observed: 2, expected: 1 });
    expect(test?.variance).toBeCloseTo(1 / 3, 14);
    expect(test?.chiSquare).toBeCloseTo(3, 12);
  });

  it('says the same whichever group comes first', () => {
    const one = logRank(dead(2, 6, 7), [...dead(3), ...alive(8, 9)]);
    const other = logRank([...dead(3), ...alive(8, 9)], dead(2, 6, 7));
    expect(one?.chiSquare).toBeCloseTo(other?.chiSquare ?? -1, 12);
  });

  it('leaves out who came later', () => {
    const late: Life = { entry: 2, time: 9, died: false };
    expect(logRank(dead(2), [late])).toBeNull();
    expect(logRank(dead(2, 6), [late, ...alive(9)])?.expected).toBeCloseTo(2 / 3 + 1 / 3, 12);
  });

  it('leaves out a death on the day of the first look', () => {
    const foundDead: Life = { entry: 20, time: 20, died: true };
    expect(logRank([...dead(1, 1), foundDead], alive(9, 9))?.expected).toBe(1);
  });
});

it('a χ² of one degree of freedom has the chance that tables print', () => {
  // Common to all tables: 3.841 at 5 %, 6.635 at 1 %.
  expect([chanceOf(0), chanceOf(3.841459), chanceOf(6.634897)].map((p) => p.toFixed(5))).toEqual([
    '1.00000',
    '0.05000',
    '0.01000',
  ]);
});
