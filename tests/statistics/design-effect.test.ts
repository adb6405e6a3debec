import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  clusteredProportion,
  commonDesignEffect,
  designEffect,
  effective,
} from '../../src/statistics/design-effect.ts';
import { wilson } from '../../src/statistics/proportions.ts';

/** `3/4 0/4`: so many of so many in each cluster. */
const clusters = (text: string) =>
  text.split(' ').map((pair) => {
    const [k = 0, n = 0] = pair.split('/').map(Number);
    return { k, n };
  });

const some = fc.array(
  fc
    .integer({ min: 0, max: 8 })
    .chain((n) => fc.record({ k: fc.integer({ min: 0, max: n }), n: fc.constant(n) })),
  { maxLength: 30 },
);

describe('the design effect', () => {
  // Worked by hand after Rao & Scott 1992. Four clutches, 4/4 5/5 0/5 3/6: p = 12/20 = 0.6.
  // Residuals k − p·n: 4 − 2.4 = 1.6; 5 − 3 = 2; 0 − 3 = −3; 3 − 3.6 = −0.6. Their squares add up to
  // 2.56 + 4 + 9 + 0.36 = 15.92. Variance of the ratio: 4/3 · 15.92 / 20² = 0.0530667. A simple proportion of 20
  // would have 0.6 · 0.4 / 20 = 0.012. So the effect is 0.0530667 / 0.012 = 4.4222, and the twenty eggs tell as much
  // as 20 / 4.4222 = 4.5226 strangers.
  it('of four clutches, worked by hand', () => {
    const four = clusters('4/4 5/5 0/5 3/6');
    expect(designEffect(four)).toBeCloseTo(4.422222222, 9);
    const { k, n, rate, low, high, ...rest } = clusteredProportion(four);
    expect([k, n, rate]).toEqual([12, 20, 0.6]);
    const few = wilson({ k: 0.6 * 4.522613065, n: 4.522613065 });
    expect(low).toBeCloseTo(few?.low ?? 0, 9);
    expect(high).toBeCloseTo(few?.high ?? 0, 9);
    expect(effective({ k, n, rate, low, high, ...rest }).n).toBeCloseTo(4.522613065, 8);
  });

  // m clusters of n that do all or nothing, half of them each: Σ(k − n/2)² = m·n²/4, so that v = 1 / (4(m − 1)) and
  // the effect is n·m/(m − 1): with many clusters, a cluster tells as much as one.
  it('of clusters that do all or nothing is their size, nearly', () => {
    const all = Array.from({ length: 100 }, (_, i) => ({ k: i % 2 === 0 ? 5 : 0, n: 5 }));
    expect(designEffect(all)).toBeCloseTo((5 * 100) / 99, 10);
  });

  // 4/4 0/4: p = ½, squares 4 + 4, variance 2/1 · 8 / 8² = 1/4; a simple proportion of 8 has 1/32.
  it('is told by two clutches', () => {
    expect(designEffect(clusters('4/4 0/4'))).toBeCloseTo(8, 12);
  });

  it.each([
    ['none did', '0/4 0/5'],
    ['all did', '4/4 5/5'],
    ['there is one cluster', '2/5'],
    ['one cluster has members', '2/5 0/0'],
    ['clusters are more alike than chance', '2/4 2/4 2/4'],
  ])('is 1 where %s', (_, text) => {
    expect(designEffect(clusters(text))).toBe(1);
  });

  it('is never below 1, never less than a number', () => {
    fc.assert(
      fc.property(some, (found) => {
        expect(designEffect(found)).toBeGreaterThanOrEqual(1);
      }),
    );
  });
});

describe('a proportion over clusters', () => {
  it('without members has counts and nothing else', () => {
    const empty = { k: 0, n: 0, rate: null, low: null, high: null, designEffect: null };
    expect(clusteredProportion([])).toEqual(empty);
    expect(clusteredProportion(clusters('0/0 0/0'))).toEqual(empty);
    expect(effective(clusteredProportion([]))).toEqual({ k: 0, n: 0 });
  });

  it('is never surer than if its members were strangers', () => {
    fc.assert(
      fc.property(some, (found) => {
        const { k, n, low, high } = clusteredProportion(found);
        const simple = wilson({ k, n });
        if (simple === null || low === null || high === null) return;
        expect(high - low).toBeGreaterThanOrEqual(simple.high - simple.low - 1e-12);
        expect(low).toBeLessThanOrEqual(k / n + 1e-12);
        expect(high).toBeGreaterThanOrEqual(k / n - 1e-12);
      }),
    );
  });
});

describe('the design effect that groups have in common', () => {
  it('of one group is its own', () => {
    const four = clusters('4/4 5/5 0/5 3/6');
    expect(commonDesignEffect([four])).toBeCloseTo(designEffect(four), 12);
  });

  // Each about its own proportion: 4/4 0/4 about 1/2 leaves 4 + 4, 3/4 1/4 leaves 1 + 1, together 10; simple
  // proportions of 8 and 8 would leave 8/4 + 8/4 = 4. Four clusters less two groups: 10 · 4/2 / 4 = 5.
  it('worked by hand', () => {
    expect(commonDesignEffect([clusters('4/4 0/4'), clusters('3/4 1/4')])).toBeCloseTo(5, 12);
  });

  it('is not silenced by a group of which nothing is known', () => {
    const four = clusters('4/4 5/5 0/5 3/6');
    expect(commonDesignEffect([clusters('0/0'), four])).toBe(commonDesignEffect([four]));
  });

  it('is not raised by groups that differ from each other', () => {
    expect(commonDesignEffect([clusters('4/4 4/4 4/4'), clusters('0/4 0/4 0/4')])).toBe(1);
  });

  it.each([
    ['there are no groups', []],
    ['each is one cluster', [clusters('3/4'), clusters('0/4')]],
    ['nobody is in them', [clusters('0/0')]],
  ])('is 1 where %s', (_, groups) => {
    expect(commonDesignEffect(groups)).toBe(1);
  });

  it('counts where a group cannot tell by itself', () => {
    expect(effective(clusteredProportion(clusters('3/3')), 3)).toEqual({ k: 1, n: 1 });
  });
});
