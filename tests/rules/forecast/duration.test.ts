import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  basisOf,
  bookDuration,
  learnedDuration,
  type ObservedDuration,
  usualRange,
} from '../../../src/rules/forecast/duration.ts';
import { normalCdf } from '../../../src/statistics/normal.ts';

const ranges = fc
  .tuple(fc.integer({ min: 8, max: 40 }), fc.integer({ min: 0, max: 12 }))
  .map(([low, width]) => ({ low, high: low + width }));
const observation: fc.Arbitrary<ObservedDuration> = fc.record({
  days: fc.integer({ min: 14, max: 90 }).map((halves) => halves / 2),
  width: fc.integer({ min: 0, max: 6 }),
  sure: fc.integer({ min: 7, max: 45 }),
  clutches: fc.constant(1),
});
const observations = fc.array(observation, { minLength: 1, maxLength: 15 });

const found = (length: number, width: number): ObservedDuration => ({
  days: length,
  width,
  sure: length,
  clutches: 1,
});
const days = (...lengths: number[]) => lengths.map((length) => found(length, 0));

describe('the book', () => {
  it('takes a profile range as the central 90 % of a normal distribution', () => {
    fc.assert(
      fc.property(
        ranges.filter(({ low, high }) => high - low >= 2),
        (range) => {
          const { mean, variance } = bookDuration(range);
          const share = (day: number) => normalCdf((day - mean) / Math.sqrt(variance));
          expect(share(range.high) - share(range.low)).toBeCloseTo(0.9, 4);
          expect(share(range.low)).toBeCloseTo(1 - share(range.high), 12);
        },
      ),
    );
  });

  it('remembers the longest that it is sure to have taken here: what may have begun long before tells of no long one', () => {
    const seen = [
      { days: 20, width: 16, sure: 12, clutches: 1 },
      { days: 13, width: 0, sure: 13, clutches: 1 },
    ];
    expect(learnedDuration({ low: 11, high: 13 }, seen).longest).toBe(13);
    expect(bookDuration({ low: 11, high: 13 }).longest).toBe(0);
  });

  it('is never surer than a standard deviation of 0.4 d, whatever the range says', () => {
    expect(bookDuration({ low: 12, high: 12 })).toMatchObject({ mean: 12, variance: 0.4 ** 2 });
    expect(bookDuration({ low: 12, high: 13 })).toMatchObject({ mean: 12.5, variance: 0.4 ** 2 });
  });

  it('splits its variance half and half: between rooms, between eggs', () => {
    const { variance, meanVariance, spreadVariance } = bookDuration({ low: 11, high: 13 });
    expect(variance).toBeCloseTo((2 / 3.29) ** 2, 12);
    expect(meanVariance).toBe(variance / 2);
    expect(spreadVariance).toBe(variance / 2);
  });

  it('is what remains without own clutches, to the last bit', () => {
    fc.assert(
      fc.property(ranges, (range) => {
        const { mean, variance, n } = learnedDuration(range, []);
        expect(n).toBe(0);
        expect(mean).toBe((range.low + range.high) / 2);
        expect(variance).toBe(Math.max(0.4, (range.high - range.low) / 3.29) ** 2);
        expect(learnedDuration(range, [])).toEqual(bookDuration(range));
      }),
    );
  });
});

describe('the days of nine in ten', () => {
  it('are the profile’s own range without clutches, but for ranges that claim to be surer than 0.4 d', () => {
    fc.assert(
      fc.property(
        ranges.filter(({ low, high }) => high - low >= 2),
        (range) => {
          const usual = usualRange(bookDuration(range));
          expect(usual.low).toBeCloseTo(range.low, 10);
          expect(usual.high).toBeCloseTo(range.high, 10);
        },
      ),
    );
    expect(usualRange(bookDuration({ low: 12, high: 12 })).high).toBeCloseTo(12 + 0.4 * 1.645, 10);
  });

  it('narrow with clutches that agree', () => {
    const { low, high } = usualRange(learnedDuration({ low: 11, high: 15 }, days(13, 13, 13, 13)));
    expect(high - low).toBeLessThan(4);
  });
});

describe('learning from own clutches', () => {
  // By hand, range 12–15: V = (3/3.29)² = 0.8314779, half 0.4157390. Lengths 13, 14, 15: SS 2, so the spread is
  // (8 × 0.4157390 + 2)/10 = 0.5325912; the room's mean has precision 1/0.4157390 + 3/0.5325912.
  it('follows the arithmetic of three clutches', () => {
    const learned = learnedDuration({ low: 12, high: 15 }, days(13, 14, 15));
    expect(learned).toMatchObject({ n: 3, degrees: 10 });
    expect(learned.spreadVariance).toBeCloseTo(0.5325912, 7);
    expect(learned.meanVariance).toBeCloseTo(1 / (2.4053556 + 5.6328384), 7);
    expect(learned.mean).toBeCloseTo((13.5 * 2.4053556 + 14 * 5.6328384) / (2.4053556 + 5.6328384), 6);
    expect(learned.variance).toBeCloseTo(learned.meanVariance + learned.spreadVariance, 12);
  });

  it('counts a length known only between two looks for less', () => {
    const range = { low: 12, high: 15 };
    const daily = learnedDuration(range, [found(16, 0)]);
    const weekly = learnedDuration(range, [found(16, 7)]);
    expect(weekly.mean).toBeLessThan(daily.mean);
    expect(weekly.mean).toBeGreaterThan(13.5);
    // A uniform 7 d wide has variance 49/12; the precision it brings is 1/(spread + 49/12).
    const half = (3 / 3.29) ** 2 / 2;
    expect(weekly.meanVariance).toBeCloseTo(1 / (1 / half + 1 / (half + 49 / 12)), 12);
  });

  it('is hardly less sure for a nest that is looked into once a week, if the usual length may lie between the looks', () => {
    const width = ({ low, high }: { low: number; high: number }) => high - low;
    fc.assert(
      fc.property(
        ranges.filter(({ low, high }) => high - low <= 5),
        fc.array(fc.integer({ min: -2, max: 2 }), { maxLength: 8 }),
        fc.integer({ min: -3, max: 3 }),
        (range, off, late) => {
          const daily = days(...off.map((one) => Math.round((range.low + range.high) / 2) + one));
          const before = learnedDuration(range, daily);
          const weekly = found(before.mean + late, 6);
          const after = learnedDuration(range, [...daily, weekly]);
          expect(width(usualRange(after))).toBeLessThan(width(usualRange(before)) + 0.25);
        },
      ),
    );
  });

  it('takes nothing for spread between eggs that the looks alone can have made', () => {
    const range = { low: 11, high: 13 };
    const weekly = [12, 13, 14, 15, 16, 17, 18].map((length) => found(length, 6));
    const { spreadVariance } = learnedDuration(range, weekly);
    expect(spreadVariance).toBeLessThan(bookDuration(range).spreadVariance * 1.1);
    expect(learnedDuration(range, days(12, 13, 14, 15, 16, 17, 18)).spreadVariance).toBeGreaterThan(2);
  });

  it('learns the same from clutches counted together as from each by itself', () => {
    fc.assert(
      fc.property(ranges, observations, fc.integer({ min: 2, max: 5 }), (range, seen, clutches) => {
        const each = learnedDuration(
          range,
          seen.flatMap((one) => Array.from({ length: clutches }, () => one)),
        );
        const counted = learnedDuration(
          range,
          seen.map((one) => ({ ...one, clutches })),
        );
        expect([counted.n, counted.degrees, counted.longest]).toEqual([each.n, each.degrees, each.longest]);
        expect(counted.mean).toBeCloseTo(each.mean, 9);
        expect(counted.variance).toBeCloseTo(each.variance, 9);
        expect(counted.meanVariance).toBeCloseTo(each.meanVariance, 9);
      }),
    );
  });

  it('does not hang on the order of the clutches', () => {
    fc.assert(
      fc.property(ranges, observations, (range, seen) => {
        const one = learnedDuration(range, seen);
        const other = learnedDuration(range, [...seen].reverse());
        expect(other.mean).toBeCloseTo(one.mean, 9);
        expect(other.variance).toBeCloseTo(one.variance, 9);
      }),
    );
  });

  it('never knows less of its mean than the book did', () => {
    fc.assert(
      fc.property(ranges, observations, (range, seen) => {
        expect(learnedDuration(range, seen).meanVariance).toBeLessThan(bookDuration(range).meanVariance);
      }),
    );
  });

  it('knows more of its mean with each clutch that does not show a wider spread', () => {
    fc.assert(
      fc.property(ranges, observations, observation, (range, seen, next) => {
        const before = learnedDuration(range, seen);
        const after = learnedDuration(range, [...seen, next]);
        fc.pre(after.spreadVariance <= before.spreadVariance);
        expect(after.meanVariance).toBeLessThan(before.meanVariance);
      }),
    );
  });

  it('narrows with clutches that agree and widens with clutches that do not', () => {
    const range = { low: 11, high: 15 };
    const book = bookDuration(range).variance;
    expect(learnedDuration(range, days(13, 13, 13, 13, 13, 13)).variance).toBeLessThan(book / 2);
    expect(learnedDuration(range, days(10, 16, 10, 16, 10, 16)).variance).toBeGreaterThan(book);
  });

  it('comes to the lengths that the room shows', () => {
    const seen = Array.from({ length: 200 }, (_, index) => found(15 + (index % 3), 0));
    const { mean, spreadVariance } = learnedDuration({ low: 11, high: 13 }, seen);
    expect(Math.abs(mean - 16)).toBeLessThan(0.1);
    expect(spreadVariance).toBeCloseTo(2 / 3, 1);
  });
});

describe('what a forecast rests on, in words', () => {
  it.each([
    [11, 13, 0, '11–13 d, book'],
    [11, 13, 1, '11–13 d, book; 1 own clutch'],
    [11, 13, 4, '11–13 d, book; 4 own clutches'],
    [12, 12, 0, '12 d, book'],
  ])('%i to %i d, %i clutches: %s', (low, high, n, words) => {
    expect(basisOf({ low, high }, n)).toBe(words);
  });
});
