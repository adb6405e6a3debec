import { describe, expect, it } from 'vitest';
import { absencesFrom, isAlone, isHenAway } from '../../src/rules/absences.ts';
import type { Brood } from '../../src/rules/brood.ts';
import { absenceWords } from '../../src/rules/warnings/parents.ts';
import type { Files } from '../rooms.ts';
import { pair, view, waxbills } from './warnings/warned.ts';

const heads = 'cock: LW-20-01\nhen: LW-20-11\nhousing: flight 2';
const brood = (more: string, head = heads, others: Files = {}) =>
  view({ 'LW-1': waxbills(`date: 2026-03-01, laid: 3\n${more}`, head), ...others }, '2026-03-20').broods.find(
    (one) => one.pair.id === 'LW-1',
  ) as Brood;
const absences = (more: string, head = heads, others: Files = {}) =>
  absencesFrom(brood(more, head, others)).map(absenceWords);

describe('a parent that is not with its nest', () => {
  it('died, left, or was taken away', () => {
    expect(absences('')).toEqual([]);
    expect(absences('date: 2026-03-05, died: hen')).toEqual(['the hen LW-20-11 died']);
    expect(absences('date: 2026-03-05, gone: {escaped: cock}')).toEqual(['the cock LW-20-01 left the room']);
    expect(absences('date: 2026-03-05, parted: {cock: cage 6}')).toEqual([
      'the cock LW-20-01 was taken away',
    ]);
  });

  it('is told in the order in which they went', () => {
    expect(absences('date: 2026-03-05, moved: {hen: cage 4}\n date: 2026-03-09, died: cock')).toEqual([
      'the hen LW-20-11 was taken away',
      'the cock LW-20-01 died',
    ]);
    expect(absences('date: 2026-03-05, died: hen\n date: 2026-03-09, parted')).toEqual([
      'the hen LW-20-11 died',
      'the pair was parted',
    ]);
  });

  it('is lost to a clutch from its first day on, not by what was before it', () => {
    const since = (on: string, words: string) => absences(`date: 2026-02-20, paired\n date: ${on}, ${words}`);
    expect(since('2026-03-01', 'died: cock')).toEqual(['the cock LW-20-01 died']);
    expect(since('2026-02-28', 'died: cock')).toEqual([]);
    expect(since('2026-03-01', 'moved: {cock: cage 4}')).toEqual(['the cock LW-20-01 was taken away']);
    expect(since('2026-03-01', 'parted')).toEqual(['the pair was parted']);
    expect(since('2026-02-28', 'parted')).toEqual([]);
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

describe('a parent that was moved', () => {
  const taken = ['the hen LW-20-11 was taken away'];

  it('by itself is no longer with its nest, in whatever words that was written', () => {
    expect(absences('date: 2026-03-05, moved: {hen: hospital cage}')).toEqual(taken);
    expect(absences('date: 2026-03-05, moved: {LW-20-11: hospital cage}')).toEqual(taken);
    const birds =
      'birds:\n  - {id: LW-20-11, species: lavender waxbill, log: [{date: 2026-03-05, moved: hospital cage}]}';
    expect(absences('', heads, { 'birds.yaml': birds })).toEqual(taken);
  });

  it('to another mate’s nest is not with this one', () => {
    const other = pair(
      'LW-2',
      'lavender waxbill',
      'date: 2026-03-05, paired',
      'cock: LW-20-01\nhen: LW-20-12\nhousing: flight 3',
    );
    expect(absences('', heads, { 'LW-2': other })).toEqual(['the cock LW-20-01 was taken away']);
  });

  it('is away from the day of its first move, whatever cage it came to later', () => {
    const away = absencesFrom(
      brood('date: 2026-03-05, moved: {hen: cage 4}\n date: 2026-03-07, moved: {hen: cage 9}'),
    );
    expect(away.map(({ day }) => day)).toEqual(
      absencesFrom(brood('date: 2026-03-05, died: hen')).map(({ day }) => day),
    );
  });

  it('is away since the pair was parted, where only a later line says who went where', () => {
    const away = absencesFrom(brood('date: 2026-03-05, parted\n date: 2026-03-07, moved: {hen: cage 9}'));
    expect(away.map(absenceWords)).toEqual(taken);
    expect(away[0]?.day).toBe(absencesFrom(brood('date: 2026-03-05, parted'))[0]?.day);
  });

  it('is there again once it was moved back, and never left where the whole pair moved', () => {
    expect(
      absences('date: 2026-03-05, moved: {hen: cage 4}\n date: 2026-03-06, moved: {hen: flight 2}'),
    ).toEqual([]);
    expect(absences('date: 2026-03-05, moved: cage 4')).toEqual([]);
  });

  it('before the clutch was begun was not taken from it', () => {
    expect(absences('date: 2026-02-25, paired\n date: 2026-02-26, moved: {cock: cage 4}')).toEqual([]);
  });

  it('lays here no more, where it is the hen', () => {
    expect(isHenAway(brood('date: 2026-03-05, moved: {hen: cage 4}'))).toBe(true);
    expect(isHenAway(brood('date: 2026-03-05, died: hen'))).toBe(true);
    expect(isHenAway(brood('date: 2026-03-05, moved: {cock: cage 4}'))).toBe(false);
    expect(isHenAway(brood('date: 2026-03-05, parted'))).toBe(false);
  });

  it('leaves the other alone, until that one has a new mate', () => {
    expect(isAlone(brood(''))).toBe(false);
    for (const lost of ['died: hen', 'gone: {escaped: cock}', 'moved: {hen: cage 4}'])
      expect(isAlone(brood(`date: 2026-03-05, ${lost}`)), lost).toBe(true);
    expect(isAlone(brood('date: 2026-03-05, died: cock\ndate: 2026-03-08, paired: {cock: LW-22-03}'))).toBe(
      false,
    );
  });

  it('leaves the other alone also where it died before the first egg was seen', () => {
    expect(isAlone(brood('date: 2026-02-28, died: cock'))).toBe(true);
  });
});
