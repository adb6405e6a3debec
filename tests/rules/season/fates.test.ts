import { describe, expect, it } from 'vitest';
import { chicksKnown, mayStillHatch, reachedCandling, youngFateOf } from '../../../src/rules/season/fates.ts';
import { day } from '../../rooms.ts';
import { clutches, FOUR, waxbills } from './rooms.ts';

function clutch(log: string, on = '2026-07-01') {
  const [first] = clutches({ 'LW-1': waxbills(log) }, on);
  if (first === undefined) throw new Error('no clutch');
  return first;
}

it('how a youth ended does not change later', () => {
  const log = `${FOUR}
    date: 2026-03-16, hatched: all
    date: 2026-03-20, died: c1
    date: 2026-04-03, fledged: [c2, c3, c4]
    date: 2026-04-10, gone: {sold: c2}
    date: 2026-04-22, independent: c3
    date: 2026-05-10, died: {cat: c3}`;
  expect(clutch(log).chicks.map(youngFateOf)).toEqual(['died', 'gone', 'independent', 'open']);
});

describe('whether an egg was there on its candling day', () => {
  it.each([
    ['2026-03-08', false],
    ['2026-03-09', true],
  ])('lost on %s', (on, there) => {
    const [egg] = clutch(`${FOUR}\n date: ${on}, lost: {broken: e1}`).eggs;
    expect(egg && reachedCandling(egg, day('2026-07-01'))).toBe(there);
  });

  it('one that was pulled before anybody sat on it never came to its day', () => {
    const stored =
      'date: 2026-03-01, laid: 1, pulled: e1\n date: 2026-03-02, laid: 1\n date: 2026-03-03, laid: 2, sitting';
    const [egg] = clutch(`${stored}\n date: 2026-03-20, lost: {broken: e1}`).eggs;
    expect(egg && reachedCandling(egg, day('2026-07-01'))).toBe(false);
  });

  it('an open one is there once its day has come', () => {
    const [egg] = clutch(FOUR, '2026-03-08').eggs;
    expect(egg && [reachedCandling(egg, day('2026-03-08')), reachedCandling(egg, day('2026-03-09'))]).toEqual(
      [false, true],
    );
  });
});

describe('whether a chick may yet come of an egg', () => {
  // Sat on from 4 March, 13 days at the longest, and a fortnight more.
  it.each([
    ['2026-03-31', true],
    ['2026-04-01', false],
  ])('on %s', (on, may) => {
    const [egg] = clutch(FOUR, on).eggs;
    expect(egg && mayStillHatch(egg, day(on))).toBe(may);
  });

  it('of one in store for as long from the day on which it was put there; of one set back, from that day', () => {
    const lasts = (more: string) => {
      const two = 'date: 2026-03-01, laid: 1\n date: 2026-03-02, laid: 1';
      return ['2026-04-04', '2026-04-05', '2026-04-10', '2026-04-11'].map((on) => {
        const [egg] = clutch(`${two}\n${more}`, on).eggs;
        return egg && mayStillHatch(egg, day(on));
      });
    };
    const stored = 'date: 2026-03-06, sitting\n date: 2026-03-08, pulled: e1';
    expect(lasts(stored)).toEqual([true, false, false, false]);
    expect(lasts(`${stored}\n date: 2026-03-14, set: e1`)).toEqual([true, true, true, false]);
  });

  it('not of one that has an end', () => {
    const [egg] = clutch(`${FOUR}\n date: 2026-03-05, lost: all`, '2026-03-06').eggs;
    expect(egg && mayStillHatch(egg, day('2026-03-06'))).toBe(false);
  });
});

describe('whether it is known how many hatched', () => {
  it.each([
    ['counted', `${FOUR}\n date: 2026-03-16, hatched: 3`, true],
    ['only heard', `${FOUR}\n date: 2026-03-16, heard`, false],
    [
      'heard, then counted, every egg with an end',
      `${FOUR}\n date: 2026-03-16, heard\n date: 2026-03-18, checked: {chicks: 3}\n date: 2026-03-25, lost: all`,
      true,
    ],
    ['three or more, with eggs left', `${FOUR}\n date: 2026-03-16, hatched: 3+`, false],
    ['found as nestlings', 'date: 2026-03-16, hatched: 3\n date: 2026-04-03, fledged: all', true],
    ['that walked off as they hatched', `${FOUR}\n date: 2026-03-16, hatched: 3, fledged: all`, true],
    ['first seen when they flew', 'date: 2026-04-03, fledged: 3', false],
  ])('%s', (_, log, known) => {
    expect(chicksKnown(clutch(log))).toBe(known);
  });
});
