import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { differenceOf, filled, type Interval, pooled, wilson } from '../../src/statistics/proportions.ts';

const counts = fc
  .integer({ min: 1, max: 400 })
  .chain((n) => fc.record({ k: fc.integer({ min: 0, max: n }), n: fc.constant(n) }));
const of = (k: number, n: number) => wilson({ k, n }) as Interval;

it('proportions are pooled by their counts, not by their shares', () => {
  expect(
    pooled([
      { k: 1, n: 1 },
      { k: 1, n: 3 },
    ]),
  ).toEqual({ k: 2, n: 4 });
  expect(pooled([])).toEqual({ k: 0, n: 0 });
});

it('of a proportion without figures nothing can be judged: it is left out', () => {
  const judged = { k: 0, n: 2 };
  expect(filled([{ k: 0, n: 0 }, judged])).toEqual([judged]);
});

describe('the interval of a proportion', () => {
  it('does not exist without anything to judge from', () => {
    expect(wilson({ k: 0, n: 0 })).toBeNull();
  });

  it('is 0 at the lower end of none, exactly, and 1 at the upper end of all', () => {
    for (let n = 1; n < 60; n++) {
      expect(Object.is(of(0, n).low, 0)).toBe(true);
      expect(of(n, n).high).toBe(1);
    }
  });

  it('lies about the proportion, inside 0 to 1', () => {
    fc.assert(
      fc.property(counts, ({ k, n }) => {
        const { low, high } = of(k, n);
        expect(low).toBeGreaterThanOrEqual(0);
        expect(high).toBeLessThanOrEqual(1);
        expect(low).toBeLessThanOrEqual(k / n);
        expect(high).toBeGreaterThanOrEqual(k / n);
        expect(low).toBeLessThan(high);
      }),
    );
  });

  it('of successes is that of failures turned round', () => {
    fc.assert(
      fc.property(counts, ({ k, n }) => {
        expect(of(k, n).low).toBeCloseTo(1 - of(n - k, n).high, 12);
      }),
    );
  });

  it('gets narrower with less confidence and with more counts', () => {
    const width = (interval: Interval | null) => (interval?.high ?? 1) - (interval?.low ?? 0);
    expect(width(wilson({ k: 3, n: 10 }, 0.9))).toBeLessThan(width(of(3, 10)));
    expect(width(of(30, 100))).toBeLessThan(width(of(3, 10)));
    expect(width(wilson({ k: 1.5, n: 5 }))).toBeGreaterThan(width(of(3, 10)));
  });
});

describe('the difference of two proportions', () => {
  it('does not exist where one of them has nothing to judge from', () => {
    expect(differenceOf({ k: 0, n: 0 }, { k: 1, n: 2 })).toBeNull();
    expect(differenceOf({ k: 1, n: 2 }, { k: 0, n: 0 })).toBeNull();
  });

  it('turns round with them, and stays within −1 to 1', () => {
    fc.assert(
      fc.property(counts, counts, (a, b) => {
        const one = differenceOf(a, b);
        const other = differenceOf(b, a);
        expect(one?.low).toBeCloseTo(-(other?.high ?? 0), 12);
        expect(one?.low).toBeGreaterThanOrEqual(-1 - 1e-12);
        expect(one?.high).toBeLessThanOrEqual(1 + 1e-12);
        expect(one?.difference).toBeCloseTo(a.k / a.n - b.k / b.n, 12);
      }),
    );
  });
});
