import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Span } from '../../../src/days.ts';
import { bookDuration, learnedDuration } from '../../../src/rules/forecast/duration.ts';
import { overdueFrom, shareHatchingAfter } from '../../../src/rules/forecast/overdue.ts';
import { windowOf } from '../../../src/rules/forecast/window.ts';
import { probabilityBy } from '../../../src/statistics/delay.ts';

const on = (day: number): Span => ({ from: day, to: day });

const ranges = fc
  .tuple(fc.integer({ min: 8, max: 40 }), fc.integer({ min: 0, max: 12 }))
  .map(([low, width]) => ({ low, high: low + width }));
const lengths = fc.array(
  fc.record({
    days: fc.integer({ min: 8, max: 45 }),
    width: fc.integer({ min: 0, max: 3 }),
    sure: fc.integer({ min: 8, max: 45 }),
    clutches: fc.constant(1),
  }),
  { maxLength: 10 },
);
const starts: fc.Arbitrary<Span> = fc
  .tuple(fc.integer({ min: 0, max: 10 }), fc.integer({ min: 0, max: 10 }))
  .map(([from, width]) => ({ from, to: from + width }));

describe('the share of such eggs that hatch later', () => {
  it('is a half on the expected day and falls day by day', () => {
    const duration = bookDuration({ low: 12, high: 15 });
    expect(shareHatchingAfter(duration, on(0), 13)).toBeCloseTo(0.5, 12);
    let before = 1;
    for (let day = 8; day <= 24; day++) {
      const share = shareHatchingAfter(duration, on(0), day);
      expect(share).toBeLessThan(before);
      before = share;
    }
  });

  it('is larger in the tail than the window lets expect, for the spread itself is only estimated', () => {
    const duration = bookDuration({ low: 12, high: 14 });
    for (const day of [15, 16, 18]) {
      const normal = 1 - probabilityBy(duration, on(0), day);
      expect(shareHatchingAfter(duration, on(0), day)).toBeGreaterThan(normal);
    }
  });

  it('averages over the days on which sitting may have begun', () => {
    const duration = bookDuration({ low: 12, high: 14 });
    const three = [0, 1, 2].map((day) => shareHatchingAfter(duration, on(day), 15));
    const mean = three.reduce((sum, share) => sum + share, 0) / 3;
    expect(shareHatchingAfter(duration, { from: 0, to: 2 }, 15)).toBeCloseTo(mean, 12);
  });
});

describe('an egg is overdue', () => {
  // Common practice: 3–4 d of grace past the longest usual incubation.
  it('not before 4 days past the range, though hardly any hatch after the third', () => {
    const duration = bookDuration({ low: 12, high: 14 });
    expect(shareHatchingAfter(duration, on(0), 17)).toBeLessThan(0.01);
    expect(overdueFrom(duration, on(0), on(0))).toBe(18);
  });

  it('counted from the last egg of its clutch', () => {
    expect(overdueFrom(bookDuration({ low: 12, high: 14 }), on(0), on(3))).toBe(21);
  });

  it('counted from the latest day on which sitting may have begun', () => {
    const unsure = { from: 0, to: 5 };
    expect(overdueFrom(bookDuration({ low: 12, high: 14 }), unsure, unsure)).toBe(23);
  });

  it('later where own clutches have hatched late', () => {
    const late = [12, 20, 13, 19, 14, 21].map((days) => ({ days, width: 0, sure: days, clutches: 1 }));
    const learned = learnedDuration({ low: 12, high: 14 }, late);
    const day = overdueFrom(learned, on(0), on(0));
    expect(day).toBeGreaterThan(overdueFrom(bookDuration({ low: 12, high: 14 }), on(0), on(0)));
    // One of this room's own was out on day 21: so may another be, that very day.
    expect(day).toBe(22);
  });

  it('only when fewer than 1 in 100 hatch on that day or later, and its clutch has had 4 days past the range', () => {
    fc.assert(
      fc.property(ranges, lengths, starts, starts, (range, seen, start, last) => {
        const duration = learnedDuration(range, seen);
        const day = overdueFrom(duration, start, last);
        expect(shareHatchingAfter(duration, start, day - 1)).toBeLessThan(0.01);
        expect(shareHatchingAfter(duration, on(start.to), day - 1), 'the latest start').toBeLessThan(0.01);
        expect(day).toBeGreaterThanOrEqual(last.to + range.high + 4);
      }),
    );
  });

  it('never inside the window of its own hatching', () => {
    // Both clutches of a room took 29 d against 8 in the book: hardly any hatches after the day that the window ends with.
    const learned = learnedDuration(
      { low: 8, high: 8 },
      Array.from({ length: 2 }, () => ({ days: 29, width: 0, sure: 8, clutches: 1 })),
    );
    expect(overdueFrom(learned, on(0), on(0))).toBeGreaterThan(windowOf(learned, [on(0)])?.to ?? Number.NaN);
    fc.assert(
      fc.property(ranges, lengths, starts, (range, seen, start) => {
        const duration = learnedDuration(range, seen);
        const window = windowOf(duration, [start]);
        expect(overdueFrom(duration, start, start)).toBeGreaterThan(window?.to ?? Number.NaN);
      }),
    );
  });
});
