import { expect, it } from 'vitest';
import type { Files } from '../../rooms.ts';
import { HATCHED, pairRoom, place, plan } from './rooms.ts';

const waxbills = (lines: readonly string[], more: Files = {}) => pairRoom('lavender waxbill', lines, more);

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

it('young that stayed are fed by who stayed, beside those that were taken out; a hatch to come is at home', () => {
  const next = ['date: 2026-04-04, clutch: 2, laid: 1', 'date: 2026-04-05, laid: 1, sitting'];
  const out = [...HATCHED, 'date: 2026-04-03, fledged: all', ...next];
  const apart = plan(waxbills([...out, 'date: 2026-04-06, moved: {cock: cage 8, c1: cage 8}']), '2026-04-13');
  const at = (housing: string) => {
    const { families, days } = place(apart, housing);
    return [families.map(({ young, hatching }) => [young.length, hatching.length]), days[0]?.young];
  };
  expect(at('cage 8')).toEqual([[[1, 0]], { expected: 1, most: 1 }]);
  expect(at('flight 2')).toEqual([[[3, 1]], { expected: 3, most: 3 }]);
  expect(place(apart, 'flight 2').days.at(-1)?.young.most).toBe(5);
});

// Lavender waxbills of 15 March are 40 days old on 24 April, the longest that they are fed (shipped profile).
it('young of whom nobody wrote that they feed themselves eat as such from the day on which they must', () => {
  const files = waxbills([...HATCHED, 'date: 2026-04-03, fledged: all']);
  const eats = (on: string) => {
    const { adults, families } = place(plan(files, on), 'flight 2');
    return [adults.map(({ number }) => number), families.map(({ young }) => young.length)];
  };
  expect(eats('2026-04-24')).toEqual([[2], [4]]);
  expect(eats('2026-04-25')).toEqual([[6], []]);
  // A month later nobody knows whether they are there.
  expect(eats('2026-05-25')).toEqual([[2], []]);
});

it('a bird bred here that was never written to feed itself eats where it lives', () => {
  const files = waxbills([...HATCHED, 'date: 2026-04-03, fledged: all'], {
    'birds.yaml': 'birds:\n  - {id: KEPT, is: LW-1/1/c1, log: [{date: 2026-04-20, moved: young flight}]}\n',
  });
  expect(place(plan(files, '2027-03-01'), 'young flight').adults).toEqual([
    { species: 'lavender waxbill', number: 1 },
  ]);
});

it('young that were fed by hand and are long grown eat as any other bird', () => {
  const files = waxbills([...HATCHED, 'date: 2026-03-16, fostered: {hand: c1}'], {
    'birds.yaml': 'birds:\n  - {id: TAME, is: LW-1/1/c1, log: [{date: 2026-05-20, moved: cage 3}]}\n',
  });
  const grown = plan(files, '2027-03-01');
  expect(grown.byHand).toEqual([]);
  expect(place(grown, 'cage 3').adults).toEqual([{ species: 'lavender waxbill', number: 1 }]);
});

it('a cock of two hens eats with the one that rears, not with the one that waits', () => {
  const idle =
    'pair: LW-0\nspecies: lavender waxbill\ncock: A\nhen: H-0\nhousing: flight 2\nlog:\n  - {date: 2026-03-17, clutch: 1, laid: 1}\n  - {date: 2026-03-18, laid: 1, sitting}\n';
  const live = (files: Files) =>
    place(plan(files, '2026-03-20', 1), 'flight 2').days[0]?.foods.live.likely ?? 0;
  expect(live(waxbills(HATCHED, { 'LW-0': idle }))).toBeCloseTo(live(waxbills(HATCHED)), 9);
});
