import { describe, expect, it } from 'vitest';
import { nestFamilies } from '../../../src/rules/feed/families.ts';
import { correctionOf, measuredUse } from '../../../src/rules/feed/measured.ts';
import { day } from '../../rooms.ts';
import { HATCHED, pairRoom, place, plan, sources } from './rooms.ts';

const measured = (lines: readonly string[], on: string, settings = 'room: x') => {
  const known = sources(pairRoom('lavender waxbill', lines, { 'nestlog.yaml': settings }), on);
  return measuredUse(nestFamilies(known), known);
};
const live = (lines: readonly string[]) =>
  place(plan(pairRoom('lavender waxbill', lines), '2026-03-24'), 'flight 2').days[0]?.foods.live;

describe('what was weighed', () => {
  it('is compared with what was reckoned for the birds of that day', () => {
    const lines = [...HATCHED, 'date: 2026-03-23, food: {live food: 6, dry seed: 9}'];
    const uses = measured(lines, '2026-03-24');
    // Of dry seed there is always some, and most of what goes from the dish is husks.
    expect(uses).toMatchObject([{ pair: 'LW-1', food: 'live', day: day('2026-03-23'), grams: 6 }]);
    const [use] = uses;
    expect(use?.factor).toBeCloseTo(6 / (use?.reckoned as number), 12);
    // Four chicks of eight days and the two that feed them, as the plan of that day has it.
    const planned = place(plan(pairRoom('lavender waxbill', HATCHED), '2026-03-23'), 'flight 2').days[0];
    expect(use?.reckoned).toBeCloseTo(planned?.foods.live.likely as number, 9);
  });

  it('counts the parent whose name nobody wrote', () => {
    const files = (pair: string) => ({
      P: `pair: P\nspecies: lavender waxbill\n${pair}housing: flight 2\nlog:\n${[...HATCHED, 'date: 2026-03-23, food: {live food: 6}'].map((line) => `  - {${line}}`).join('\n')}\n`,
    });
    const reckoned = (pair: string) => {
      const known = sources(files(pair), '2026-03-24');
      return measuredUse(nestFamilies(known), known)[0]?.reckoned;
    };
    expect(reckoned('hen: B\n')).toBeCloseTo(reckoned('cock: A\nhen: B\n') as number, 9);
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
    const little = measured([...HATCHED, 'date: 2026-03-23, food: {live food: 0.5}'], '2026-03-24');
    expect(little).toMatchObject([{ grams: 0.5, factor: null }]);
    const nobody = measured(['date: 2026-03-01, paired, food: {egg food: 6}'], '2026-03-24');
    expect(nobody).toMatchObject([{ grams: 6, reckoned: 0, factor: null }]);
  });

  it('teaches nothing where next to nothing was reckoned, though it agrees', () => {
    const [use] = measured(
      [
        ...HATCHED,
        'date: 2026-03-20, died: [c2, c3, c4]',
        'date: 2026-04-03, fledged: all',
        'date: 2026-04-23, food: {egg food: 0.1}',
      ],
      '2026-04-23',
    );
    // Of the egg food of the last chick’s last day with its parents, half a tenth of a gram.
    expect(use?.reckoned).toBeCloseTo(0.054, 3);
    expect(use?.factor).toBeNull();
  });

  it('is the latest that was weighed, and all kinds of a food of one day together', () => {
    const lines = [
      ...HATCHED,
      'date: 2026-03-21, food: {live food: 3}',
      'date: 2026-03-22, food: {mealworms: 4, live ant pupae: 2, crickets: 1}',
      'date: 2026-03-23, food: [live food]',
    ];
    expect(measured(lines, '2026-03-24')).toMatchObject([{ day: day('2026-03-22'), grams: 7 }]);
  });

  it('of one pair corrects no other, and where nothing can be learned from it the room’s goes before', () => {
    const use = (pair: string | null, factor: number | null) => ({
      pair,
      food: 'live' as const,
      day: day('2026-03-23'),
      grams: 6,
      reckoned: 4,
      factor,
    });
    const [family] = nestFamilies(sources(pairRoom('lavender waxbill', HATCHED), '2026-03-24'));
    if (family === undefined) throw new Error('no family');
    const ten = { low: 5, likely: 10, high: 20 };
    const likely = (...uses: ReturnType<typeof use>[]) => correctionOf(family, uses)('live', ten).likely;
    expect(likely(use('LW-2', 1.5))).toBe(10);
    expect(likely(use('LW-2', 1.5), use('LW-1', 0.5))).toBe(5);
    expect(likely(use('LW-1', null), use(null, 2))).toBe(20);
    expect(correctionOf(family, [use('LW-1', 1.5)])('live', ten)).toEqual({
      low: 12,
      likely: 15,
      high: 18.75,
    });
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
