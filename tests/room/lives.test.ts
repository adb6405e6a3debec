import { describe, expect, it } from 'vitest';
import {
  eggsInReach,
  fledging,
  housingOf,
  incubation,
  isDependent,
  layingEndsAfter,
  takesEggs,
  whyNotAlive,
  whyNotOpen,
  youngInReach,
} from '../../src/room/lives.ts';
import { day, room } from '../rooms.ts';
import { birdIn, clutchIn, eggIn, journal, pairIn, waxbills } from './facts.ts';

const log = `
  date: 2026-03-01, paired
  date: 2026-03-05, laid: 5, sitting
  date: 2026-03-06, lost: {broken: e5}
  date: 2026-03-07, lost: {given: e4}
  date: 2026-03-18, hatched: [e1, e2]
  date: 2026-03-25, died: {chilled: c2}
  date: 2026-04-06, fledged: c1
  date: 2026-04-25, independent: c1
`;
const head = 'housing: cage 3';

describe('an egg', () => {
  it.each([
    ['e1', 'it hatched on 2026-03-18 as LW-1/1/c1'],
    ['e3', null],
    ['e4', 'it was given on 2026-03-07'],
    ['e5', 'it was lost (broken) on 2026-03-06'],
  ])('is open until it ends: %s', (ref, why) => {
    expect(whyNotOpen(eggIn(room({ P: waxbills(log) }, '2026-05-01'), `LW-1/1/${ref}`))).toBe(why);
  });

  it('in an incubator is still its own pair’s to tell of', () => {
    const set =
      'date: 2026-03-05, laid: 3\ndate: 2026-03-06, pulled: e1\ndate: 2026-03-07, set: {incubator: e1}';
    const reach = (on: string) => eggsInReach(pairIn(room({ P: waxbills(set) }, on), 'LW-1'));
    expect(reach('2026-03-06').map(({ ref }) => ref)).toEqual(['e2', 'e3']);
    expect(reach('2026-03-07').map(({ ref }) => ref)).toEqual(['e2', 'e3', 'e1']);
  });
});

describe('a chick', () => {
  it('depends on its feeders from hatching until it is independent or dead', () => {
    const depends = (on: string) =>
      clutchIn(room({ P: waxbills(log) }, on), 'LW-1/1').chicks.map((chick) => isDependent(chick));
    expect(depends('2026-03-18')).toEqual([true, true]);
    expect(depends('2026-04-24')).toEqual([true, false]);
    expect(depends('2026-04-25')).toEqual([false, false]);
  });

  it('that died or left can do nothing any more', () => {
    const known = room({ P: waxbills(`${log}\ndate: 2026-06-01, gone: {sold: c1}`) }, '2026-06-01');
    expect(whyNotAlive(birdIn(known, 'LW-1/1/c2'))).toMatchObject({ why: 'it died on 2026-03-25' });
    expect(whyNotAlive(birdIn(known, 'LW-1/1/c1'))).toMatchObject({ why: 'it left on 2026-06-01' });
  });

  it('fed by hand is still its own pair’s to tell of', () => {
    const hand =
      'date: 2026-03-05, laid: 2, sitting\ndate: 2026-03-18, hatched: 2\ndate: 2026-03-20, fostered: {hand: c2}';
    const pair = pairIn(room({ P: waxbills(hand) }, '2026-03-20'), 'LW-1');
    expect(youngInReach(pair).map(({ ref }) => ref)).toEqual(['c1', 'c2']);
  });

  it('lives where its parents live, and there still when it feeds itself', () => {
    const known = room({ P: waxbills(log, head) }, '2026-04-25');
    expect(housingOf(birdIn(known, 'LW-1/1/c1'))).toBe('cage 3');
  });
});

describe('a clutch', () => {
  it('takes eggs for six days after its last, and none once a chick is out', () => {
    const clutch = (on: string) => clutchIn(room({ P: waxbills(log) }, on), 'LW-1/1');
    expect(takesEggs(clutch('2026-03-11'), day('2026-03-11'))).toBe(true);
    expect(takesEggs(clutch('2026-03-12'), day('2026-03-12'))).toBe(false);
    expect(takesEggs(clutch('2026-03-18'), day('2026-03-05'))).toBe(false);
  });
});

describe('a species that nobody knows', () => {
  it('is reckoned with as the widest of the small cage birds', () => {
    const { profile } = pairIn(room({ P: journal('X-1', 'xyzzy', '') }, '2026-03-05'), 'X-1');
    expect(profile).toBeNull();
    expect([incubation(profile), fledging(profile), layingEndsAfter(profile)]).toEqual([
      { low: 10, high: 25 },
      { low: 14, high: 40 },
      6,
    ]);
  });
});
