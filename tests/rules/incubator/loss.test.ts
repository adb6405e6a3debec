import { describe, expect, it } from 'vitest';
import type { Egg } from '../../../src/room/model.ts';
import {
  type EggLoss,
  eggLoss,
  shares,
  WANTED,
  WANTED_WORDS,
  widest,
} from '../../../src/rules/incubator/loss.ts';
import { type Line, lineThrough } from '../../../src/statistics/line.ts';
import { randomOf } from '../../../src/statistics/random.ts';
import { day, room } from '../../rooms.ts';
import { hillFinches } from '../agenda/hill-finch.ts';
import { pair } from '../warnings/warned.ts';

/** Hill finches hatch after 11–13 d, so an egg set on 2 March should pip about day 11, the 13th. */
const LAID = 'date: 2026-03-01, laid: 1, note: "before anybody sat"\ndate: 2026-03-01, pulled: e1';
const SET = `${LAID}\ndate: 2026-03-02, set: {incubator: e1}`;

function loss(
  log: string,
  on = '2026-03-12',
  but: Record<string, string> = { 'adult-mass': '12' },
): EggLoss | null {
  const egg = room(hillFinches(log, but), on).pairs[0]?.clutches[0]?.eggs[0];
  if (egg === undefined) throw new Error('no egg');
  return eggLoss(egg, day(on));
}

describe('the loss of an egg in the incubator', () => {
  // 1.20 g fresh; 0.0164 g a day is 15 % in 11 days.
  const track = `${SET}, weighed: {e1: 1.20}
    date: 2026-03-05, weighed: {e1: 1.151}
    date: 2026-03-08, weighed: {e1: 1.102}`;

  it('is carried on to the day of pipping', () => {
    const one = loss(track);
    expect(one).toMatchObject({ warm: 6, pip: day('2026-03-13'), verdict: 'on track' });
    expect(one?.fresh?.by).toBe('scales');
    expect(one?.lost).toBeCloseTo(0.098 / 1.2, 3);
    expect(one?.atPip?.likely).toBeCloseTo(0.15, 3);
  });

  it('is surer with every weight', () => {
    const width = (one: EggLoss | null) => (one?.atPip?.high ?? 0) - (one?.atPip?.low ?? 0);
    const [early, late] = [loss(track, '2026-03-05'), loss(track)];
    // One interval of three days: s·√2 / 3 a day, carried on over 11 days: 1.645 · 11 · 0.00236 / 1.2 = 3.6 points.
    expect(width(early) / 2).toBeCloseTo(0.036, 2);
    expect(width(late)).toBeLessThan(0.6 * width(early));
    expect(early?.verdict).toBe('on track');
  });

  it('too slow or too fast is said only where the weights bear it out', () => {
    const after = (grams: number) =>
      loss(`${SET}, weighed: {e1: 1.20}\ndate: 2026-03-08, weighed: {e1: ${grams}}`);
    expect([1.17, 1.128, 1.1, 1.076, 1.04].map((grams) => after(grams)?.verdict)).toEqual([
      'slow',
      'unsure',
      'on track',
      'unsure',
      'fast',
    ]);
  });

  it('starts from length and breadth where nobody weighed the fresh egg, and is less sure', () => {
    // 0.548 · 1.6 · 1.17² = 1.2002 g.
    const sized = `${LAID.replace('laid: 1,', 'laid: 1, measured: {e1: 16.0 x 11.7},')}
      date: 2026-03-02, set: {incubator: e1}
      date: 2026-03-08, weighed: {e1: 1.102}`;
    const one = loss(sized);
    expect(one?.fresh).toMatchObject({ by: 'size' });
    expect(one?.atPip?.likely).toBeCloseTo(0.15, 2);
    expect((one?.atPip?.high ?? 0) - (one?.atPip?.low ?? 0)).toBeGreaterThan(0.1);
  });

  it('follows from the line alone where neither is known', () => {
    const one = loss(`${SET}
      date: 2026-03-03, weighed: {e1: 1.1836}
      date: 2026-03-06, weighed: {e1: 1.1345}
      date: 2026-03-09, weighed: {e1: 1.0855}`);
    expect(one?.fresh?.by).toBe('line');
    expect(one?.atPip?.likely).toBeCloseTo(0.15, 2);
  });

  it('cannot be told by one weight', () => {
    const one = loss(`${SET}\ndate: 2026-03-08, weighed: {e1: 1.1}`);
    expect(one).toMatchObject({ fresh: null, lost: null, atPip: null, verdict: null });
    const set = loss(`${SET}, weighed: {e1: 1.2}`);
    expect(set).toMatchObject({ fresh: { grams: 1.2, by: 'scales' }, lost: 0, atPip: null });
  });

  it('of an egg that a hen sat on before counts what it lost under her', () => {
    const one = loss(
      `date: 2026-03-01, laid: 1, weighed: {e1: 1.20}
       date: 2026-03-01, sitting
       date: 2026-03-05, set: {incubator: e1}, weighed: {e1: 1.10}
       date: 2026-03-08, weighed: {e1: 1.07}`,
      '2026-03-08',
    );
    // At day 4 it weighs 1.10 g; at 0.01 g a day it comes to 1.03 g on day 11.
    expect(one?.fresh).toEqual({ grams: 1.2, by: 'scales' });
    expect(one?.atPip?.likely).toBeCloseTo(1 - 1.03 / 1.2, 3);
  });

  it('that gains weight is a slow one, never less than nothing', () => {
    const one = loss(`${SET}, weighed: {e1: 1.10}\ndate: 2026-03-08, weighed: {e1: 1.14}`);
    expect(one?.atPip).toMatchObject({ low: 0, likely: 0 });
    expect(one?.verdict).toBe('slow');
  });

  it('heeds no slip of the pen', () => {
    const one = loss(`${SET}, weighed: {e1: 1.20}\ndate: 2026-03-08, weighed: {e1: 11.02}`);
    expect(one).toMatchObject({ last: { grams: 1.2 }, atPip: null });
  });

  it.each([
    ['in a nest', 'date: 2026-03-01, laid: 1, sitting, weighed: {e1: 1.2}'],
    ['never weighed', SET],
    ['that has hatched', `${SET}, weighed: {e1: 1.2}\ndate: 2026-03-12, hatched: e1`],
  ])('is not asked of an egg %s', (_what, log) => {
    expect(loss(log)).toBeNull();
  });

  it('needs an incubation time', () => {
    expect(loss(track, '2026-03-12', { incubation: '' })).toBeNull();
    const files = { X: pair('X', 'moonfinch', track) };
    const egg = room(files, '2026-03-12').pairs[0]?.clutches[0]?.eggs[0] as Egg;
    expect(eggLoss(egg, day('2026-03-12'))).toBeNull();
  });

  it('is not foretold of one that a hen sat on before where nobody knows what it weighed fresh', () => {
    const sat = `date: 2026-03-01, laid: 1, sitting
      date: 2026-03-05, set: {incubator: e1}
      date: 2026-03-06, weighed: {e1: 1.10}
      date: 2026-03-08, weighed: {e1: 1.07}`;
    expect(loss(sat)).toMatchObject({ fresh: null, lost: null, atPip: null });
    expect(loss(sat.replace('sitting', 'sitting, measured: {e1: 16.0 x 11.7}'))?.fresh?.by).toBe('size');
    // A size that cannot be right is none.
    expect(loss(sat.replace('sitting', 'sitting, measured: {e1: 160 x 117}'))?.fresh).toBeNull();
  });
});

describe('how sure the loss is', () => {
  const [grams, shape, draws] = [0.005, 0.02, 60_000];
  const line = (points: readonly { x: number; y: number }[]) =>
    lineThrough(points.map((one) => ({ ...one, deviation: grams })));

  /** The standard deviation of the loss, drawn many times: weights are wrong by 0.005 g, and so is the day of pipping by `open`. */
  function drawn(
    points: readonly [number, number][],
    { fresh = null, deviation = 0, open = 0 }: { fresh?: number | null; deviation?: number; open?: number },
  ): number {
    const chance = randomOf('scales');
    const losses = Array.from({ length: draws }, () => {
      const read = points.map(([x, y]) => ({ x, y: y + grams * chance.normal() }));
      const { intercept, slope } = line(read) as Line;
      const whole = fresh === null ? intercept : fresh + deviation * chance.normal();
      return 1 - (intercept + slope * (11 + open * chance.normal())) / whole;
    });
    const mean = losses.reduce((sum, one) => sum + one, 0) / draws;
    return Math.sqrt(losses.reduce((sum, one) => sum + (one - mean) ** 2, 0) / draws);
  }

  /** To a fiftieth: what draws are good for. */
  const near = (ratio: number) => Math.abs(ratio - 1) < 0.02;

  /** Nine in ten lie within 1.645 deviations to either side. */
  const told = (log: string) => {
    const { low, high } = loss(log)?.atPip ?? { low: 0, high: 0 };
    return (high - low) / (2 * 1.645);
  };

  it('follows from what the scales show, where its warmth began in the incubator', () => {
    const track = `${SET}, weighed: {e1: 1.20}
      date: 2026-03-05, weighed: {e1: 1.151}
      date: 2026-03-08, weighed: {e1: 1.102}`;
    const sure = drawn(
      [
        [0, 1.2],
        [3, 1.151],
        [6, 1.102],
      ],
      {},
    );
    expect(told(track) / sure).toSatisfy(near);
  });

  it('takes in how far its fresh mass is only reckoned from length and breadth', () => {
    const sat = `date: 2026-03-01, laid: 1, sitting, measured: {e1: 16.0 x 11.7}
      date: 2026-03-05, set: {incubator: e1}, weighed: {e1: 1.10}
      date: 2026-03-08, weighed: {e1: 1.07}`;
    const sure = drawn(
      [
        [4, 1.1],
        [7, 1.07],
      ],
      { fresh: 1.2002, deviation: shape * 1.2002 },
    );
    expect(told(sat) / sure).toSatisfy(near);
    const weighed = sat.replace('measured: {e1: 16.0 x 11.7}', 'weighed: {e1: 1.2}');
    expect(
      told(weighed) /
        drawn(
          [
            [4, 1.1],
            [7, 1.07],
          ],
          { fresh: 1.2, deviation: grams },
        ),
    ).toSatisfy(near);
  });

  it('takes in that nobody saw on which day she began to sit', () => {
    // From 1 to 7 March, each day as likely: a deviation of 6 / √12 days about the 4th.
    const late = `date: 2026-03-01, laid: 1, weighed: {e1: 1.2}
      date: 2026-03-07, sitting
      date: 2026-03-08, set: {incubator: e1}, weighed: {e1: 1.10}
      date: 2026-03-12, weighed: {e1: 1.02}`;
    const sure = drawn(
      [
        [4, 1.1],
        [8, 1.02],
      ],
      { fresh: 1.2, deviation: grams, open: 6 / Math.sqrt(12) },
    );
    expect(told(late) / sure).toSatisfy(near);
  });
});

it('the wanted loss is 15 % and a deviation of 2.5 either way', () => {
  expect([WANTED.low, WANTED.high]).toEqual([0.15 - 0.025, 0.175]);
  expect(WANTED_WORDS).toBe('12.5–17.5 %');
});

it('several eggs have the widest range of them', () => {
  const [slow, fast] = [
    { low: 0.05, likely: 0.08, high: 0.1 },
    { low: 0.16, likely: 0.18, high: 0.2 },
  ];
  expect(shares(widest([slow, fast]))).toBe('5–20 %');
  expect(shares({ low: 0.151, high: 0.149 })).toBe('15 %');
});

describe('figures that no scales show', () => {
  // Without masses in the profile nothing can be called a slip.
  const unknown = { 'adult-mass': '' };
  const huge = '9'.repeat(400);

  it.each([
    ['a size of nothing', LAID.replace('laid: 1,', 'laid: 1, measured: {e1: 0 x 0},'), '1.1', '1.0'],
    ['a size without end', LAID.replace('laid: 1,', `laid: 1, measured: {e1: ${huge} x 1},`), '1.1', '1.0'],
    ['a weight without end', LAID, huge, '1.0'],
    ['a weight of almost nothing', LAID, '0.0000001', '99999'],
  ])('%s: every figure stays a figure', (_what, laid, first, second) => {
    const one = loss(
      `${laid}
       date: 2026-03-02, set: {incubator: e1}
       date: 2026-03-05, weighed: {e1: ${first}}
       date: 2026-03-08, weighed: {e1: ${second}}`,
      '2026-03-08',
      unknown,
    );
    const figures = [
      one?.last.grams,
      one?.fresh?.grams,
      one?.lost,
      one?.atPip?.low,
      one?.atPip?.likely,
      one?.atPip?.high,
    ];
    for (const figure of figures) expect(figure ?? 0).toSatisfy(Number.isFinite);
  });
});
