import { expect, it } from 'vitest';
import type { Brood } from '../../../src/rules/brood.ts';
import {
  leavesCold,
  needsWarmth,
  other,
  parentsLeft,
  unbrooded,
} from '../../../src/rules/warnings/parents.ts';
import { mixedNest, pair, view, waxbills } from './warned.ts';

const seen = (more: string, on = '2026-03-20') => ({
  brood: view({ 'LW-1': waxbills(`date: 2026-03-01, laid: 3\n${more}`) }, on).broods[0] as Brood,
});

// Lavender waxbill: the hen stops brooding by night at 7–9 d (from memory).
it('eggs that may hatch and chicks below the age of brooding need warmth', () => {
  expect(needsWarmth(seen('').brood)).toBe(true);
  expect(needsWarmth(seen('date: 2026-03-12, candled: {clear: all}').brood)).toBe(false);
  const hatched = 'date: 2026-03-13, hatched: 3';
  expect(unbrooded(seen(hatched, '2026-03-21').brood)).toHaveLength(3);
  expect(needsWarmth(seen(hatched, '2026-03-22').brood)).toBe(false);
});

it('where nobody knows how long a species broods, ten days; who left the nest is not brooded', () => {
  const log = 'date: 2026-03-01, laid: 3\n date: 2026-03-13, hatched: 3';
  const brood = (on: string, more = '') =>
    view({ 'X-1': pair('X-1', 'ridge finch', `${log}\n${more}`) }, on).broods[0] as Brood;
  expect(unbrooded(brood('2026-03-22'))).toHaveLength(3);
  expect(unbrooded(brood('2026-03-23'))).toEqual([]);
  expect(unbrooded(brood('2026-03-20', 'date: 2026-03-20, fledged: c1'))).toHaveLength(2);
});

it('ten days too, where the keeper’s own profile does not say it', () => {
  const files = {
    'species/ridge-finch.yaml': 'species: ridge finch\nclutch: 4-5\nincubation: 11-13\n',
    'X-1': pair('X-1', 'ridge finch', 'date: 2026-03-01, laid: 3\n date: 2026-03-13, hatched: 3'),
  };
  expect(unbrooded(view(files, '2026-03-22').broods[0] as Brood)).toHaveLength(3);
  expect(unbrooded(view(files, '2026-03-23').broods[0] as Brood)).toEqual([]);
});

it('who is left of the two, also where nobody wrote which of them was taken away', () => {
  const away = (...all: ('cock' | 'hen' | null)[]) =>
    parentsLeft(all.map((parent) => ({ parent, bird: null, day: 0, how: 'parted' as const })));
  expect([away(), away('cock'), away('hen'), away(null), away('cock', 'hen')]).toEqual([
    'the parents',
    'the hen',
    'the cock',
    'the parent that stayed',
    null,
  ]);
});

it('the other of cock and hen', () => {
  expect([other('cock'), other('hen')]).toEqual(['hen', 'cock']);
});

it('guests of another species are brooded as long as their own kind', () => {
  // Lavender waxbills to 9 d, Bengalese finches to 12 d, each from memory.
  const nest = (on: string) =>
    view(mixedNest(), on).broods.find(({ pair: { id } }) => id === 'BF-1') as Brood;
  expect(unbrooded(nest('2026-03-22'))).toHaveLength(4);
  expect(unbrooded(nest('2026-03-23')).map(({ clutch }) => clutch?.pair.id)).toEqual(['BF-1', 'BF-1']);
});

it('a hen that is taken away leaves her eggs cold, and so does whoever died; a cock that is taken away need not', () => {
  const bird = null;
  const away = (parent: 'cock' | 'hen' | null, how: 'died' | 'gone' | 'parted') =>
    leavesCold({ parent, bird, day: 0, how });
  expect([away('hen', 'parted'), away('cock', 'died'), away('cock', 'gone')]).toEqual([true, true, true]);
  expect([away('cock', 'parted'), away(null, 'parted')]).toEqual([false, false]);
});
