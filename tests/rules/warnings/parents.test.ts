import { describe, expect, it } from 'vitest';
import type { Brood } from '../../../src/rules/brood.ts';
import {
  absencesFrom,
  absenceWords,
  needsWarmth,
  other,
  unbrooded,
} from '../../../src/rules/warnings/parents.ts';
import { mixedNest, pair, view, waxbills } from './warned.ts';

const heads = 'cock: LW-20-01\nhen: LW-20-11\nhousing: flight 2';
const seen = (more: string, on = '2026-03-20', head = heads) => {
  const known = view({ 'LW-1': waxbills(`date: 2026-03-01, laid: 3\n${more}`, head) }, on);
  return { known, brood: known.broods[0] as Brood };
};
const absences = (more: string, head = heads) => {
  const { known, brood } = seen(more, '2026-03-20', head);
  return absencesFrom(known, brood).map(absenceWords);
};

describe('a parent that is not with its nest', () => {
  it('died, left, or was taken away', () => {
    expect(absences('')).toEqual([]);
    expect(absences('date: 2026-03-05, died: hen')).toEqual(['the hen LW-20-11 died']);
    expect(absences('date: 2026-03-05, gone: {escaped: cock}')).toEqual(['the cock LW-20-01 left the room']);
    expect(absences('date: 2026-03-05, parted: {cock: cage 6}')).toEqual([
      'the cock LW-20-01 was taken away',
    ]);
  });

  it('is nobody in particular where the journal does not say which', () => {
    expect(absences('date: 2026-03-05, parted')).toEqual(['the pair was parted']);
  });

  it('is there again once they are put together, or once it is back', () => {
    expect(absences('date: 2026-03-05, parted: {cock: cage 6}\n date: 2026-03-06, reunited')).toEqual([]);
    expect(absences('date: 2026-03-05, gone: {escaped: cock}\n date: 2026-03-06, back: cock')).toEqual([]);
  });

  it('stays lost to its own clutch when a new mate has come', () => {
    expect(absences('date: 2026-03-05, died: hen\n date: 2026-03-09, paired: {hen: LW-20-12}')).toEqual([
      'the hen LW-20-11 died',
    ]);
  });

  it('is nobody’s loss where one of several may be the parent', () => {
    expect(absences('date: 2026-03-05, died: LW-20-11', 'hen: [LW-20-11, LW-20-12]')).toEqual([]);
  });
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
