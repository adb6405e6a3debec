import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { turnbullCurve } from '../../src/statistics/interval-censored.ts';
import { kaplanMeier } from '../../src/statistics/survival.ts';

const FOREVER = Number.POSITIVE_INFINITY;

const life = fc.record({
  entry: fc.integer({ min: -1, max: 2 }),
  left: fc.integer({ min: 2, max: 20 }),
  width: fc.oneof(fc.integer({ min: 1, max: 6 }), fc.constant(FOREVER)),
});

describe('deaths between two looks', () => {
  it('of nobody are nowhere', () => {
    expect(turnbullCurve([])).toEqual([]);
  });

  it('are no step of the curve where nobody died', () => {
    expect(turnbullCurve([{ entry: 0, left: 5, right: FOREVER }])).toEqual([]);
  });

  it('with a look each day make the usual curve, late entry and all', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            entry: fc.integer({ min: -1, max: 3 }),
            time: fc.integer({ min: 4, max: 30 }),
            died: fc.boolean(),
          }),
          { minLength: 1, maxLength: 30 },
        ),
        (lives) => {
          const usual = kaplanMeier(lives);
          const daily = turnbullCurve(
            lives.map(({ entry, time, died }) =>
              died ? { entry, left: time - 1, right: time } : { entry, left: time, right: FOREVER },
            ),
          );
          expect(daily.map(({ time }) => time)).toEqual(usual.map(({ time }) => time));
          daily.forEach(({ surviving, atRisk, died }, i) => {
            expect(surviving).toBeCloseTo(usual[i]?.surviving ?? -1, 6);
            expect(atRisk).toBeCloseTo(usual[i]?.atRisk ?? -1, 6);
            expect(died).toBeCloseTo(usual[i]?.died ?? -1, 6);
          });
        },
      ),
    );
  });

  it('make a curve that only falls, in steps that lie inside what was seen', () => {
    fc.assert(
      fc.property(fc.array(life, { minLength: 1, maxLength: 25 }), (found) => {
        const lives = found.map(({ entry, left, width }) => ({ entry, left, right: left + width }));
        let before = 1;
        for (const { from, time, surviving } of turnbullCurve(lives)) {
          expect(lives.some(({ left, right }) => left <= from && time <= right)).toBe(true);
          expect(surviving).toBeGreaterThanOrEqual(0);
          expect(surviving).toBeLessThan(before);
          before = surviving;
        }
        if (lives.every(({ right }) => right < FOREVER)) expect(before).toBeCloseTo(0, 4);
      }),
      { numRuns: 60 },
    );
  });

  // At 2 three are followed and one dies: 2/3. Two who enter at 2 are at risk from 5 on: there one of four dies: 1/2.
  it('are not asked of who was not yet followed', () => {
    const curve = turnbullCurve([
      { entry: 0, left: 1, right: 2 },
      { entry: 0, left: 4, right: 5 },
      { entry: 0, left: 8, right: FOREVER },
      { entry: 2, left: 8, right: FOREVER },
      { entry: 2, left: 6, right: 7 },
    ]);
    expect(curve.map(({ atRisk }) => atRisk)).toEqual([3, 4, 3]);
    expect(curve[1]?.surviving).toBeCloseTo(1 / 2, 10);
  });

  // With p dead by 2 of those dead by 3, the looks have the chance p · p · 1 · (1 − p), greatest at 2/3.
  it('fell as those did whose death is known better', () => {
    const curve = turnbullCurve([
      { entry: -1, left: 0, right: 2 },
      { entry: -1, left: 0, right: 2 },
      { entry: -1, left: 1, right: 3 },
      { entry: -1, left: 2, right: 4 },
    ]);
    expect(curve).toMatchObject([
      { from: 1, time: 2 },
      { from: 2, time: 3, surviving: 0 },
    ]);
    expect(curve[0]?.surviving).toBeCloseTo(1 / 3, 10);
  });

  it('fell nowhere between two looks where all that died for certain died before or after', () => {
    const early = Array.from({ length: 5 }, () => ({ entry: -1, left: 0, right: 2 }));
    const late = Array.from({ length: 5 }, () => ({ entry: -1, left: 7, right: 9 }));
    const curve = turnbullCurve([
      ...early,
      { entry: -1, left: 0, right: 5 },
      { entry: -1, left: 3, right: 9 },
      ...late,
    ]);
    expect(curve.map(({ from, time }) => [from, time])).toEqual([
      [0, 2],
      [7, 9],
    ]);
  });

  it.each([
    ['was found dead at the first look', { entry: 5, left: 4, right: 5 }],
    ['was seen but once', { entry: 5, left: 5, right: FOREVER }],
  ])('are told no better by a chick that %s', (_, once) => {
    const followed = { entry: -1, left: 2, right: 9 };
    expect(turnbullCurve([followed, once])).toEqual(turnbullCurve([followed]));
    expect(turnbullCurve([once])).toEqual([]);
  });

  it('name the stretch in which they fell', () => {
    const curve = turnbullCurve([
      { entry: -1, left: 2, right: 6 },
      { entry: -1, left: 9, right: FOREVER },
    ]);
    expect(curve).toMatchObject([{ from: 2, time: 6, surviving: 0.5 }]);
  });
});
