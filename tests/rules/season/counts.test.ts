import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countChicks, countEggs } from '../../../src/rules/season/counts.ts';
import { sumOf } from '../../../src/statistics/sums.ts';
import { anyRoom, clutches, FOUR, LATER, waxbills } from './rooms.ts';

describe('what became of eggs and young', () => {
  it('adds up, whatever happened', () => {
    fc.assert(
      fc.property(anyRoom, (files) => {
        const all = clutches(files, LATER);
        const eggs = countEggs(all.flatMap((clutch) => clutch.eggs));
        expect(eggs.hatched + sumOf(Object.values(eggs.lost)) + eggs.taken + eggs.open).toBe(eggs.laid);
        expect(eggs.fertile + eggs.clear + eggs.unknown + eggs.taken).toBe(eggs.laid);
        const chicks = countChicks(all.flatMap((clutch) => clutch.chicks));
        expect(chicks.independent + sumOf(Object.values(chicks.died)) + chicks.gone + chicks.open).toBe(
          chicks.hatched,
        );
        expect(chicks.hatched).toBe(eggs.hatched);
        expect(chicks.fledged).toBeGreaterThanOrEqual(chicks.independent);
      }),
      { numRuns: 60 },
    );
  });

  it('ranks causes, and says where none was given', () => {
    const [clutch] = clutches(
      {
        'LW-1': waxbills(
          `${FOUR}\n date: 2026-03-20, lost: {clear: [e2, e3], broken: e4}\n date: 2026-03-21, lost: e1`,
        ),
      },
      '2026-04-01',
    );
    expect(Object.entries(countEggs(clutch?.eggs ?? []).lost)).toEqual([
      ['clear', 2],
      ['broken', 1],
      ['unknown', 1],
    ]);
  });

  it('does not count what happens to a bird that feeds itself', () => {
    const log = `${FOUR}\n date: 2026-03-16, hatched: e1\n date: 2026-04-03, fledged: c1\n date: 2026-04-22, independent: c1\n date: 2026-06-01, died: {hawk: c1}`;
    const [clutch] = clutches({ 'LW-1': waxbills(log) }, '2026-07-01');
    expect(countChicks(clutch?.chicks ?? [])).toMatchObject({ independent: 1, died: {} });
  });

  it('counts young that died while they were fed by cause, and who flew before', () => {
    const log = `${FOUR}\n date: 2026-03-16, hatched: [e1, e2, e3]\n date: 2026-03-20, died: {chilled: c1}\n date: 2026-04-03, fledged: [c2, c3]\n date: 2026-04-05, died: c2`;
    const [clutch] = clutches({ 'LW-1': waxbills(log) }, '2026-04-06');
    expect(countChicks(clutch?.chicks ?? [])).toEqual({
      hatched: 3,
      fledged: 2,
      independent: 0,
      died: { chilled: 1, unknown: 1 },
      gone: 0,
      open: 1,
    });
  });
});
