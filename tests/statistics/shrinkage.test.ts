import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shrink, spreadOf } from '../../src/statistics/shrinkage.ts';

const groups = fc.array(
  fc
    .integer({ min: 0, max: 30 })
    .chain((n) => fc.record({ k: fc.integer({ min: 0, max: n }), n: fc.constant(n) })),
  { maxLength: 15 },
);

describe('the spread of groups', () => {
  it.each([
    ['there are no groups', []],
    [
      'one group has figures',
      [
        { k: 3, n: 4 },
        { k: 0, n: 0 },
      ],
    ],
    [
      'all did',
      [
        { k: 3, n: 3 },
        { k: 5, n: 5 },
      ],
    ],
    [
      'none did',
      [
        { k: 0, n: 3 },
        { k: 0, n: 5 },
      ],
    ],
  ])('is unknown where %s', (_, found) => {
    expect(spreadOf(found)).toBeNull();
  });

  // p = ½; scatter 2 · 10 · 0.4² = 3.2, of it by chance ½ · ½ · (2 − 1) = 0.25; so 10 · 0.25 / (3.2 − 0.25) = 2.5 / 2.95.
  it('of two groups by hand: far apart, they say little of a third', () => {
    const spread = spreadOf([
      { k: 9, n: 10 },
      { k: 1, n: 10 },
    ]);
    expect(spread?.a).toBeCloseTo(2.5 / 2.95 / 2, 14);
    expect(spread?.b).toBeCloseTo(2.5 / 2.95 / 2, 14);
  });

  // p = ½; scatter 4 · 10 · 0.4² = 6.4, of it by chance ½ · ½ · (5 − 3) = 0.5; a group weighs (50 − 500/50) / 4 = 10.
  it('of five groups by hand: of more than three, James and Stein’s', () => {
    const found = [9, 9, 1, 1, 5].map((k) => ({ k, n: 10 }));
    const spread = spreadOf(found);
    expect(spread?.a).toBeCloseTo((10 * 0.5) / (6.4 - 0.5) / 2, 14);
    expect(spread?.b).toBeCloseTo((10 * 0.5) / (6.4 - 0.5) / 2, 14);
  });

  it('weighs no more than all figures together, and some at least', () => {
    fc.assert(
      fc.property(groups, (found) => {
        const spread = spreadOf(found);
        if (spread === null) return;
        expect(spread.a + spread.b).toBeLessThanOrEqual(found.reduce((sum, { n }) => sum + n, 0) + 1e-9);
        expect(Math.min(spread.a, spread.b)).toBeGreaterThan(0);
      }),
    );
  });
});

describe('groups drawn towards all', () => {
  it('lie between their own proportion and the common one', () => {
    fc.assert(
      fc.property(groups, (found) => {
        const spread = spreadOf(found);
        if (spread === null) return;
        const common = spread.a / (spread.a + spread.b);
        shrink(found, spread).forEach(({ mean, low, high }, i) => {
          const { k, n } = found[i] as { k: number; n: number };
          const own = n === 0 ? common : k / n;
          expect(mean).toBeGreaterThanOrEqual(Math.min(own, common) - 1e-12);
          expect(mean).toBeLessThanOrEqual(Math.max(own, common) + 1e-12);
          // The mean of a very lopsided belief may lie outside its central interval.
          expect(low).toBeGreaterThanOrEqual(0);
          expect(high).toBeGreaterThanOrEqual(low);
          expect(high).toBeLessThanOrEqual(1);
        });
      }),
    );
  });

  it('do not let one lucky clutch lead', () => {
    const found = [
      { k: 4, n: 4 },
      { k: 36, n: 40 },
      { k: 20, n: 40 },
      { k: 22, n: 40 },
      { k: 12, n: 40 },
    ];
    const spread = spreadOf(found);
    expect(spread).not.toBeNull();
    if (spread === null) return;
    const [lucky, steady] = shrink(found, spread);
    expect(lucky?.mean).toBeLessThan(steady?.mean ?? 0);
  });
});
