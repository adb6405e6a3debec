import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stageSurvival } from '../../src/statistics/nest-survival.ts';

describe('survival of a stage', () => {
  it.each([
    ['nobody was watched', 0, 0],
    ['all was lost in less than a day each', 2, 1],
    ['all was lost within a day each', 3, 3],
  ])('has no figures where %s', (_, losses, exposure) => {
    expect(stageSurvival(losses, exposure, 14)).toEqual({
      exposure,
      losses,
      daily: null,
      se: null,
      period: null,
      low: null,
      high: null,
    });
  });

  it('is a number between its limits, between 0 and 1', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 1, max: 60 }), (losses, days) => {
        const { period, low, high } = stageSurvival(losses, losses * 3 + 50, days);
        for (const figure of [period, low, high]) {
          expect(figure).toBeGreaterThanOrEqual(0);
          expect(figure).toBeLessThanOrEqual(1);
        }
        expect(low).toBeLessThanOrEqual(period as number);
        expect(high).toBeGreaterThanOrEqual(period as number);
      }),
    );
  });

  it('of a stage without length is certain', () => {
    expect(stageSurvival(1, 10, 0)).toMatchObject({ period: 1, low: 1, high: 1 });
  });
});
