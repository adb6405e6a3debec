import { expect, it } from 'vitest';
import { HATCHED, pairRoom, place, plan } from './rooms.ts';

const waxbills = (lines: readonly string[]) => pairRoom('lavender waxbill', lines);

// A cock takes the last young with him into another cage while the hen sits again (common practice).
it('young that were taken out with the cock eat where they live, and so does he', () => {
  const out = [...HATCHED, 'date: 2026-04-03, fledged: all'];
  const apart = plan(
    waxbills([...out, 'date: 2026-04-06, moved: {cock: cage 8, all: cage 8}']),
    '2026-04-07',
  );
  const together = plan(waxbills(out), '2026-04-07');
  const there = place(apart, 'cage 8');
  expect(there.families.map(({ young, parents }) => [young.length, parents.map(({ id }) => id)])).toEqual([
    [4, ['A']],
  ]);
  expect(there.days[0]?.foods.live.likely).toBeGreaterThan(0);
  // The hen that stays eats for herself alone.
  const home = place(apart, 'flight 2');
  expect(home.families).toEqual([]);
  expect(home.days[0]?.foods.live.likely).toBe(0);
  const dry = (planned: typeof apart) => planned.daily[0]?.foods.dry.likely ?? 0;
  expect(dry(apart)).toBeGreaterThan(0);
  expect(dry(apart)).toBeLessThanOrEqual(dry(together) * 1.2);
});
