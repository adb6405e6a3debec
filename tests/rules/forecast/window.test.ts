import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Span } from '../../../src/days.ts';
import { bookDuration, learnedDuration } from '../../../src/rules/forecast/duration.ts';
import { firstWindow, forecastDay, windowOf } from '../../../src/rules/forecast/window.ts';
import type { DayDistribution } from '../../../src/statistics/delay.ts';

const durations = fc
  .tuple(fc.integer({ min: 8, max: 40 }), fc.integer({ min: 0, max: 12 }))
  .map(([low, width]) => bookDuration({ low, high: low + width }));
const starts: fc.Arbitrary<Span> = fc
  .tuple(fc.integer({ min: 20_000, max: 20_010 }), fc.integer({ min: 0, max: 15 }))
  .map(([from, width]) => ({ from, to: from + width }));
const clutches = fc.array(starts, { minLength: 1, maxLength: 7 });

const on = (day: number): Span => ({ from: day, to: day });

/** The q-day counted off the list of probabilities. */
function countedDay({ first, probabilities }: DayDistribution, q: number): number {
  let sum = 0;
  const index = probabilities.findIndex((probability) => {
    sum += probability;
    return sum >= q - 1e-11;
  });
  return first + index;
}

describe('the forecast of one egg', () => {
  it('sums to 1', () => {
    fc.assert(
      fc.property(durations, starts, (duration, start) => {
        const { probabilities } = forecastDay(duration, start);
        expect(probabilities.reduce((sum, next) => sum + next, 0)).toBeCloseTo(1, 12);
      }),
    );
  });

  // Common practice: sitting day 0 is the day sitting began.
  it('a sitting of 12 days hatches on sitting + 12', () => {
    const window = windowOf(bookDuration({ low: 12, high: 12 }), [on(100)]);
    expect(window).toEqual({ from: 111, likely: 112, to: 113 });
  });
});

describe('the window of a clutch', () => {
  it('runs from the earliest 10 % day to the last 90 % day, each egg from its own clock', () => {
    fc.assert(
      fc.property(durations, clutches, (duration, eggs) => {
        const forecasts = eggs.map((start) => forecastDay(duration, start));
        const window = windowOf(duration, eggs);
        const from = Math.min(...forecasts.map((forecast) => countedDay(forecast, 0.1)));
        const earliest = forecasts.filter((forecast) => countedDay(forecast, 0.1) === from);
        expect(window).toEqual({
          from,
          likely: Math.min(...earliest.map((forecast) => countedDay(forecast, 0.5))),
          to: Math.max(...forecasts.map((forecast) => countedDay(forecast, 0.9))),
        });
      }),
    );
  });

  it('has its days in order, and no egg more or other order of eggs makes it narrower', () => {
    fc.assert(
      fc.property(durations, clutches, starts, (duration, eggs, more) => {
        const window = windowOf(duration, eggs);
        const wider = windowOf(duration, [more, ...eggs].reverse());
        if (window === null || wider === null) throw new Error('a clutch with eggs has a window');
        expect(window.from).toBeLessThanOrEqual(window.likely);
        expect(window.likely).toBeLessThanOrEqual(window.to);
        expect(wider.from).toBeLessThanOrEqual(window.from);
        expect(wider.to).toBeGreaterThanOrEqual(window.to);
      }),
    );
  });

  it('holds the narrower window when a start is less sure by as many days on both sides', () => {
    fc.assert(
      fc.property(durations, starts, fc.integer({ min: 1, max: 8 }), (duration, start, days) => {
        const sure = windowOf(duration, [start]);
        const unsure = windowOf(duration, [{ from: start.from - days, to: start.to + days }]);
        if (sure === null || unsure === null) throw new Error('an egg has a window');
        expect(unsure.from).toBeLessThanOrEqual(sure.from);
        expect(unsure.to).toBeGreaterThanOrEqual(sure.to);
      }),
    );
  });

  it('moves neither end earlier when the start may also have been later', () => {
    fc.assert(
      fc.property(durations, starts, (duration, start) => {
        const sure = windowOf(duration, [start]);
        const unsure = windowOf(duration, [{ from: start.from, to: start.to + 1 }]);
        if (sure === null || unsure === null) throw new Error('an egg has a window');
        for (const end of ['from', 'to'] as const) {
          expect(unsure[end] - sure[end]).toBeGreaterThanOrEqual(0);
          expect(unsure[end] - sure[end]).toBeLessThanOrEqual(1);
        }
      }),
    );
  });

  it('narrows when own clutches agree', () => {
    const range = { low: 11, high: 15 };
    const own = Array.from({ length: 8 }, () => ({ days: 12, width: 0, sure: 12, clutches: 1 }));
    expect(windowOf(bookDuration(range), [on(100)])).toEqual({ from: 111, likely: 113, to: 115 });
    expect(windowOf(learnedDuration(range, own), [on(100)])).toEqual({ from: 111, likely: 112, to: 113 });
  });

  it('that says when to look is of several the one that begins first, of two such the one that is likelier sooner', () => {
    const [slow, quick, late] = [
      { from: 10, likely: 20, to: 30 },
      { from: 10, likely: 12, to: 13 },
      { from: 11, likely: 11, to: 12 },
    ];
    for (const some of [
      [slow, late],
      [late, slow],
    ])
      expect(firstWindow(some)).toBe(slow);
    for (const some of [
      [slow, late, quick],
      [quick, slow, late],
    ])
      expect(firstWindow(some)).toBe(quick);
    expect(firstWindow([])).toBeUndefined();
  });

  it('does not exist without live eggs', () => {
    expect(windowOf(bookDuration({ low: 12, high: 14 }), [])).toBeNull();
  });
});

/**
 * Ikebuchi et al. 2017, Zoological Science 34(5), captive zebra finches: 18 clutches, 63 chicks, a whole clutch hatched
 * over 3.1 d on average (numbers from a published summary of the paper). Compared are calendar days, the first and
 * the last hatching day counted, to within half a day. The summary does not say how days were counted: were 3.1 the
 * days between the two, the forecast would be 1.3 d short of them, its window still long enough.
 */
describe('hatching of a zebra finch clutch is spread over 3.1 d on average', () => {
  const OBSERVED = 3.1;
  const duration = bookDuration({ low: 12, high: 14 });
  /** Four eggs laid on days 0 to 3; each starts when it is laid, or when the pair begins to sit, if that is later. */
  const clutch = (sittingEgg: number) => [0, 1, 2, 3].map((laid) => on(Math.max(laid, sittingEgg - 1)));

  /** Mean days from the first to the last hatching, when eggs of one nest differ as eggs do, not as rooms do. */
  function meanSpread(eggs: readonly Span[]): number {
    const forecasts = eggs.map((start) =>
      forecastDay({ ...duration, variance: duration.spreadVariance }, start),
    );
    const by = ({ first, probabilities }: DayDistribution, day: number) =>
      probabilities.slice(0, Math.max(0, day - first + 1)).reduce((sum, next) => sum + next, 0);
    let spread = 0;
    for (let day = 0; day < 40; day++) {
      const all = forecasts.reduce((product, forecast) => product * by(forecast, day), 1);
      const none = forecasts.reduce((product, forecast) => product * (1 - by(forecast, day)), 1);
      // Mean of the last less mean of the first is the number of days on which some have hatched and some have not.
      spread += 1 - all - none;
    }
    return spread;
  }

  it('so is a forecast for four eggs laid a day apart with sitting from egg 2 or 3', () => {
    const spread = (meanSpread(clutch(2)) + meanSpread(clutch(3))) / 2;
    expect(Math.abs(spread + 1 - OBSERVED)).toBeLessThan(0.5);
  });

  it('and the window has room for it without being twice as long', () => {
    for (const sittingEgg of [2, 3]) {
      const window = windowOf(duration, clutch(sittingEgg));
      if (window === null) throw new Error('a clutch with eggs has a window');
      const length = window.to - window.from + 1;
      expect(length).toBeGreaterThanOrEqual(OBSERVED);
      expect(length).toBeLessThan(2 * OBSERVED);
    }
  });
});
