import { describe, expect, it } from 'vitest';
import { type Belief, type Beliefs, beliefsOf, type Step, steps } from '../../../src/rules/ahead/beliefs.ts';
import { type Course, coursesOf } from '../../../src/rules/ahead/courses.ts';
import { NEVER } from '../../../src/rules/ahead/fate.ts';
import { type Prospect, prospectsOf } from '../../../src/rules/ahead/prospects.ts';
import { learnedDurations } from '../../../src/rules/durations.ts';
import { bookDuration } from '../../../src/rules/forecast/duration.ts';
import { betaMean } from '../../../src/statistics/beta.ts';
import { probabilityBy } from '../../../src/statistics/delay.ts';
import { normalQuantile } from '../../../src/statistics/normal.ts';
import { day, type Files, room } from '../../rooms.ts';
import { DRAWS, ever, futures, layingPair } from './futures.ts';

const at = (files: Files, on: string, draws?: number) => futures(room(files, on), draws);

describe('the futures of a clutch', () => {
  it('are the same for the same record, to the last draw', () => {
    const files = { A: layingPair('A', 5) };
    expect(at(files, '2026-03-10')).toEqual(at(files, '2026-03-10'));
  });

  it('are not touched by what other pairs of other species have', () => {
    const other = layingPair('B', 4).replace('zebra finch', 'star finch');
    const [alone, beside] = [
      at({ A: layingPair('A', 5) }, '2026-03-10'),
      at({ A: layingPair('A', 5), B: other }, '2026-03-10'),
    ];
    expect(beside.slice(0, alone.length).map(({ hatched }) => hatched)).toEqual(
      alone.map(({ hatched }) => hatched),
    );
  });

  it('hold hatching before fledging before feeding itself, in every draw', () => {
    for (const { hatched, fledged, independent, ringable } of at({ A: layingPair('A', 5) }, '2026-03-10')) {
      fledged.forEach((out, draw) => {
        if (out !== NEVER) expect(out).toBeGreaterThan(hatched[draw] as number);
        if (out !== NEVER) expect(ringable[draw]).toBe(hatched[draw]);
        if (independent[draw] !== NEVER) expect(independent[draw]).toBeGreaterThan(out);
      });
    }
  });

  it('expect of unjudged eggs what the rates make of them', () => {
    const stood = room({ A: layingPair('A', 5) }, '2026-03-06');
    const { fertility, hatchOfFertile } = beliefsOf(stood)('zebra finch');
    const { mean } = ever(futures(stood, 20_000), 'hatched', 20_000);
    expect(mean / (5 * betaMean(fertility.share) * betaMean(hatchOfFertile.share))).toBeCloseTo(1, 1);
  });

  it('expect more of eggs that the lamp showed fertile', () => {
    const judged = layingPair('A', 5, ['{date: 2026-03-12, candled: {fertile: all}}']);
    expect(ever(at({ A: judged }, '2026-03-13'), 'hatched').mean).toBeGreaterThan(
      ever(at({ A: layingPair('A', 5) }, '2026-03-13'), 'hatched').mean + 0.5,
    );
  });

  it('widen with the luck that clutch mates share: five of one clutch vary more than five of five', () => {
    const one = ever(
      at({ A: layingPair('A', 5, ['{date: 2026-03-12, candled: {fertile: all}}']) }, '2026-03-13'),
      'hatched',
    );
    const many = Object.fromEntries(
      ['A', 'B', 'C', 'D', 'E'].map((id) => [
        id,
        layingPair(id, 1, ['{date: 2026-03-12, candled: {fertile: all}}']),
      ]),
    );
    const five = ever(at(many, '2026-03-13'), 'hatched');
    expect(one.mean).toBeCloseTo(five.mean, 0);
    expect(one.high - one.low).toBeGreaterThanOrEqual(five.high - five.low);
  });
});

/** Futures where all that is known of a step is its share. */
function sure(files: Files, on: string, share: Partial<Record<Step, number>> = {}): Course[] {
  const stood = room(files, on);
  const belief = (p: number): Belief => ({
    share: { a: p * 1e9, b: (1 - p) * 1e9 },
    likeness: 1e-6,
    own: { k: 0, n: 0, clutches: 0 },
  });
  const beliefs = Object.fromEntries(steps.map((step) => [step, belief(share[step] ?? 1 - 1e-6)]));
  return coursesOf(prospectsOf(stood).prospects, {
    day: stood.day,
    draws: DRAWS,
    beliefs: () => beliefs as Beliefs,
    durations: learnedDurations(stood),
  });
}

describe('a clutch of which some have hatched', () => {
  const files = { A: layingPair('A', 3, ['{date: 2026-03-16, hatched: 2}']) };

  it('still expects of its last egg no more than the rates make of it', () => {
    const courses = sure(files, '2026-03-16', { fertility: 0.7, hatchOfFertile: 0.8 });
    expect(courses.map(({ prospect }) => prospect.name)).toEqual(['A/1/e3', 'A/1/c1', 'A/1/c2']);
    // Its own days are nearly over, so that it hatches at most as often as 0.7 · 0.8.
    const { mean } = ever(courses.slice(0, 1), 'hatched');
    expect(mean).toBeGreaterThan(0.2);
    expect(mean).toBeLessThan(0.6);
  });

  it('loses of its chicks in the nest and after it what the rates take', () => {
    const young = sure(files, '2026-03-16', { fledge: 0.6, independence: 0.5 }).slice(1);
    expect(ever(young, 'fledged').mean / 2).toBeCloseTo(0.6, 1);
    expect(ever(young, 'independent').mean / 2).toBeCloseTo(0.3, 1);
    expect(ever(sure(files, '2026-03-16').slice(1), 'independent').mean).toBe(2);
  });
});

describe('a clutch that is still laid', () => {
  // Shipped profile of the zebra finch: four to six eggs, one a day; 5 in the mean.
  it('is expected to come to a usual one', () => {
    const files = {
      A: '\npair: A\nspecies: zebra finch\nlog:\n  - {date: 2026-03-01, clutch: 1, laid: 1}\n  - {date: 2026-03-02, laid: 1}\n',
    };
    const hatched = ever(sure(files, '2026-03-02'), 'hatched');
    expect(hatched).toMatchObject({ low: 4, high: 6 });
    expect(hatched.mean).toBeCloseTo(5, 1);
  });
});

describe('the days of a clutch', () => {
  /** A clutch of each of these years that hatched after 15 days and left the nest after 22. */
  const own = Object.fromEntries(
    [2020, 2021, 2022, 2023, 2024, 2025].map((year) => [
      `Z-${year}`,
      `
pair: Z-${year}
species: zebra finch
log:
  - {date: ${year}-01-02, after: ${year}-01-01, clutch: 1, laid: 1, sitting}
  - {date: ${year}-01-17, after: ${year}-01-16, hatched: 1}
  - {date: ${year}-02-08, after: ${year}-02-07, fledged: 1}
  - {date: ${year}-03-01, independent: 1}
`,
    ]),
  );
  const mean = (files: Files) => {
    const course = sure({ ...files, A: layingPair('A', 4) }, '2026-03-05').find(
      ({ prospect }) => prospect.name === 'A/1/e4',
    );
    const days = (of: Int32Array, from: Int32Array) =>
      of.reduce((sum, on, draw) => sum + on - (from[draw] as number), 0) / DRAWS;
    const { hatched, fledged } = course as Course;
    return {
      sitting: days(
        hatched,
        hatched.map(() => day('2026-03-04')),
      ),
      nest: days(fledged, hatched),
    };
  };

  // Shipped profile: 12–15 days of sitting and 17–22 in the nest. A room's own clutches outweigh it the more there are.
  it('are those of this room where its own clutches told them', () => {
    const [book, learned] = [mean({}), mean(own)];
    expect(book.sitting).toBeCloseTo(13.5, 1);
    expect(book.nest).toBeCloseTo(19.5, 0);
    expect(learned.sitting).toBeCloseTo(14.7, 0);
    expect(learned.nest).toBeCloseTo(21.5, 0);
  });
});

describe('an egg that a look still found in its shell', () => {
  // With p the chance to hatch and F the share of such clutches due by the look: n eggs share the length of their sitting,
  // so that it is p(1 − F) / (1 − F + F(1 − p)ⁿ), by Bayes’ rule.
  it.each([1, 2])('hatches as often as Bayes’ rule leaves it, %i of a clutch', (eggs) => {
    const looked = layingPair('A', eggs, [`{date: 2026-03-${14 + eggs}, checked: {eggs: ${eggs}}}`]);
    const stood = room({ A: looked }, `2026-03-${14 + eggs}`);
    const range = stood.pairs[0]?.profile?.incubation?.value ?? { low: 0, high: 0 };
    const duration = bookDuration(range);
    const begun = { from: day(`2026-03-0${eggs}`), to: day(`2026-03-0${eggs}`) };
    const prospects = prospectsOf(stood)
      .prospects.slice(0, eggs)
      .map((one): Prospect => ({ ...one, is: { ...one.is, start: begun } }));
    const outBy = (mean: number) =>
      probabilityBy({ mean, variance: duration.spreadVariance }, begun, stood.day);
    const sure = (p: number) => ({ share: { a: p * 1e9, b: (1 - p) * 1e9 }, likeness: 1e-9, own });
    const own = { k: 0, n: 0, clutches: 0 };
    const all = sure(0.7);
    const draws = 20_000;
    const courses = coursesOf(prospects, {
      day: stood.day,
      draws,
      beliefs: () => ({ fertility: all, hatchOfFertile: all, fledge: all, independence: all }),
      durations: learnedDurations(stood),
    });
    // Over what is not known of this room's mean, which belongs to all its clutches and is not judged by one egg.
    const p = 0.7 * 0.7;
    const middles = Array.from({ length: 1000 }, (_, i) => normalQuantile((i + 0.5) / 1000));
    const expected =
      middles
        .map((z) => outBy(duration.mean + z * Math.sqrt(duration.meanVariance)))
        .reduce((sum, out) => sum + (p * (1 - out)) / (1 - out + out * (1 - p) ** eggs), 0) / 1000;
    expect(expected).toBeLessThan(p - 0.05);
    expect(Math.abs(ever(courses, 'hatched', draws).mean / eggs - expected)).toBeLessThan(
      4 * Math.sqrt((expected * (1 - expected)) / draws),
    );
  });

  it('is never said to have hatched before that look', () => {
    const looked = layingPair('A', 4, ['{date: 2026-03-19, checked: {eggs: 4}}']);
    const courses = at({ A: looked }, '2026-03-19');
    expect(courses.length).toBeGreaterThanOrEqual(4);
    for (const { hatched } of courses) {
      expect(Math.min(...hatched)).toBeGreaterThan(day('2026-03-19'));
    }
  });
});

describe('a young bird', () => {
  const hatched = ['{date: 2026-03-17, hatched: 4}'];
  it('has the surer prospects the more of the nest is behind it', () => {
    const files = { A: layingPair('A', 4, hatched) };
    const [young, old] = ['2026-03-18', '2026-04-01'].map((on) => ever(at(files, on), 'fledged').mean);
    expect(old).toBeGreaterThan((young ?? 0) + 0.2);
    expect(old).toBeLessThanOrEqual(4);
  });

  it('that left the nest has only the weeks to independence before it', () => {
    const out = { A: layingPair('A', 4, [...hatched, '{date: 2026-04-06, fledged: 4}']) };
    const courses = at(out, '2026-04-07');
    expect(ever(courses, 'fledged').mean).toBe(0);
    expect(ever(courses, 'independent').mean).toBeGreaterThan(3);
  });

  it('of a clutch that lost its mates has the worse luck', () => {
    const lost = layingPair('A', 4, [...hatched, '{date: 2026-03-19, died: {unknown: [c1, c2, c3]}}']);
    const [share] = [at({ A: lost }, '2026-03-20')].map((courses) => ever(courses, 'fledged').mean);
    const whole = ever(at({ A: layingPair('A', 4, hatched) }, '2026-03-20'), 'fledged').mean / 4;
    expect(share).toBeLessThan(whole - 0.1);
  });
});
