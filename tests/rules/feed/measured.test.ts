import { describe, expect, it } from 'vitest';
import { nestFamilies } from '../../../src/rules/feed/families.ts';
import { correctionOf, measuredUse } from '../../../src/rules/feed/measured.ts';
import { HATCHED, pairRoom, place, plan, sources } from './rooms.ts';

const measured = (lines: readonly string[], on: string, settings = 'room: x') => {
  const known = sources(pairRoom('lavender waxbill', lines, { 'nestlog.yaml': settings }), on);
  return measuredUse(nestFamilies(known), known);
};
const live = (lines: readonly string[]) =>
  place(plan(pairRoom('lavender waxbill', lines), '2026-03-24'), 'flight 2').days[0]?.foods.live;

describe('what was weighed', () => {
  it('is compared with what was reckoned for the birds of that day', () => {
    const [use] = measured([...HATCHED, 'date: 2026-03-23, food: {live food: 6, dry seed: 9}'], '2026-03-24');
    expect(use).toMatchObject({ pair: 'LW-1', food: 'live', grams: 6 });
    expect(use?.factor).toBeCloseTo(6 / (use?.reckoned as number), 12);
  });

  it('corrects the days that follow, and makes them surer', () => {
    const before = live(HATCHED);
    const after = live([...HATCHED, 'date: 2026-03-23, food: {mealworms: 4, live ant pupae: 2}']);
    if (before === undefined || after === undefined) throw new Error('no plan');
    // A day older than when it was weighed.
    expect(after.likely / 6).toBeGreaterThan(0.9);
    expect(after.likely / 6).toBeLessThan(1.1);
    expect(after.high / after.low).toBeLessThan(before.high / before.low / 1.5);
  });

  it('teaches nothing where nobody was reared, or something else must have been weighed', () => {
    expect(measured(['date: 2026-03-01, paired, food: {live food: 6}'], '2026-03-24')[0]?.factor).toBeNull();
    expect(
      measured([...HATCHED, 'date: 2026-03-23, food: {live food: 600}'], '2026-03-24')[0]?.factor,
    ).toBeNull();
    expect(measured([...HATCHED, 'date: 2026-03-23, food: [live food]'], '2026-03-24')).toEqual([]);
  });

  it('in the room’s log is for the whole room; a pair’s own goes before it', () => {
    const log =
      'log:\n  - {date: 2026-03-22, food: {live food: 12}}\n  - {date: 2026-04-22, food: {live food: 1}}\n';
    const lines = [...HATCHED, 'date: 2026-03-23, food: {live food: 6}'];
    const uses = measured(lines, '2026-03-24', log);
    expect(uses.map(({ pair, grams }) => [pair, grams])).toEqual([
      ['LW-1', 6],
      [null, 12],
    ]);
    const [family] = nestFamilies(sources(pairRoom('lavender waxbill', lines), '2026-03-24'));
    if (family === undefined) throw new Error('no family');
    const ten = { low: 5, likely: 10, high: 20 };
    const own = uses[0]?.factor as number;
    expect(correctionOf(family, uses)('live', ten).likely).toBeCloseTo(10 * own, 9);
    expect(correctionOf(family, uses.slice(1))('live', ten).likely).toBeCloseTo(
      10 * (uses[1]?.factor as number),
      9,
    );
    expect(correctionOf(family, uses)('egg', ten)).toEqual(ten);
  });
});
