import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { curveOf, kaplanMeier } from '../../src/statistics/survival.ts';
import { survivingAt } from './surviving.ts';

const life = fc.record({
  entry: fc.integer({ min: -1, max: 5 }),
  time: fc.integer({ min: 0, max: 40 }),
  died: fc.boolean(),
});

describe('a survival curve', () => {
  it('of nobody, or of no deaths, has no steps', () => {
    expect(kaplanMeier([])).toEqual([]);
    expect(kaplanMeier([{ entry: 0, time: 9, died: false }])).toEqual([]);
    expect(survivingAt([], 9)).toBe(1);
  });

  it('without censoring is the share that is left', () => {
    const steps = kaplanMeier([1, 2, 2, 4].map((time) => ({ entry: 0, time, died: true })));
    expect(steps.map(({ surviving }) => surviving)).toEqual([0.75, 0.25, 0]);
    expect([survivingAt(steps, 0.5), survivingAt(steps, 3), survivingAt(steps, 9)]).toEqual([1, 0.25, 0]);
  });

  // At 2 three are followed and one dies: 2/3. The one who enters at 2, then, is at risk at 5: of three one dies: 4/9.
  it('leaves out who was not yet followed', () => {
    const steps = kaplanMeier([
      { entry: 0, time: 2, died: true },
      { entry: 0, time: 5, died: true },
      { entry: 0, time: 8, died: false },
      { entry: 2, time: 8, died: false },
    ]);
    expect(steps.map(({ atRisk }) => atRisk)).toEqual([3, 3]);
    expect(steps[1]?.surviving).toBeCloseTo(4 / 9, 14);
  });

  it('does not count a death on the day of the first look', () => {
    expect(kaplanMeier([{ entry: 4, time: 4, died: true }])).toEqual([]);
  });

  it('never rises, stays within its limits and between 0 and 1', () => {
    fc.assert(
      fc.property(fc.array(life, { maxLength: 60 }), (lives) => {
        let before = 1;
        for (const { surviving, low, high, se, atRisk, died } of kaplanMeier(lives)) {
          expect(surviving).toBeLessThanOrEqual(before);
          expect(surviving).toBeGreaterThanOrEqual(0);
          expect(died).toBeLessThanOrEqual(atRisk);
          expect(Number.isFinite(se)).toBe(true);
          if (low === null || high === null) expect(surviving).toBe(0);
          else {
            expect(low).toBeLessThanOrEqual(surviving + 1e-12);
            expect(high).toBeGreaterThanOrEqual(surviving - 1e-12);
          }
          before = surviving;
        }
      }),
    );
  });

  it('where nobody died is sure, as far as these lives go', () => {
    expect(curveOf([{ time: 3, atRisk: 4, died: 0 }])).toMatchObject([
      { surviving: 1, se: 0, low: 1, high: 1 },
    ]);
  });

  it('takes expected numbers as well as whole ones', () => {
    const [step] = curveOf([{ time: 3, atRisk: 7.5, died: 1.5 }]);
    expect(step?.surviving).toBeCloseTo(0.8, 14);
  });
});
