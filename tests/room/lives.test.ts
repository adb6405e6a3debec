import { describe, expect, it } from 'vitest';
import {
  eggsInReach,
  fledging,
  housingOf,
  incubation,
  independence,
  isDependent,
  layingEndsAfter,
  takesEggs,
  usualClutch,
  wasFedByHand,
  whyNotAlive,
  whyNotOpen,
  youngInReach,
} from '../../src/room/lives.ts';
import { wordsOf } from '../../src/room/scene.ts';
import { day, room } from '../rooms.ts';
import { birdIn, clutchIn, days, eggIn, journal, pairIn, waxbills } from './facts.ts';

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

it('who died was alive on the last day on which it was handled or seen by itself, in whichever nest', () => {
  const own = 'date: 2026-03-05, laid: 5, fostered: {BF-1: all}\ndate: 2026-04-14, died: [c2, c3]';
  const host = `date: 2026-03-06, sitting
    date: 2026-03-18, hatched: [LW-1/1/e1, LW-1/1/e2, LW-1/1/e3]
    date: 2026-03-26, ringed: {LW-1/1/c2: LW-02}
    date: 2026-03-28, moved: {LW-1/1/c3: cage 9}`;
  const known = room({ P: waxbills(own), B: journal('BF-1', 'Bengalese finch', host) }, '2026-04-14');
  // Ringing is a look into the foster's nest: whoever died did so after that day.
  const died = ['c2', 'c3'].map((ref) => birdIn(known, `LW-1/1/${ref}`).fate);
  expect(died.map((fate) => fate?.kind === 'died' && days(fate.span))).toEqual([
    '03-27…04-14',
    '03-28…04-14',
  ]);
});

it('who was ringed in the morning and found dead in the evening died on that day', () => {
  const log = `date: 2026-03-05, laid: 5, sitting\ndate: 2026-03-18, hatched: [e1, e2]
    date: 2026-03-26, time: 07:00, ringed: {c1: LW-01}\ndate: 2026-03-26, time: 18:00, died: [c1, c2]`;
  const known = room({ P: waxbills(log) }, '2026-04-14');
  const died = ['c1', 'c2'].map((ref) => birdIn(known, `LW-1/1/${ref}`).fate);
  expect(died.map((fate) => fate?.kind === 'died' && days(fate.span))).toEqual(['03-26', '03-19…03-26']);
});

it('a parent that is found dead died that day: whoever feeds is seen daily', () => {
  const log = 'date: 2026-03-05, laid: 2\ndate: 2026-03-09, died: hen';
  const { fate } = birdIn(room({ P: waxbills(log, 'hen: LW-20-11') }, '2026-04-14'), 'LW-20-11');
  expect(fate?.kind === 'died' && days(fate.span)).toBe('03-09');
});

describe('an egg', () => {
  it.each([
    ['e1', 'it hatched on 2026-03-18 as LW-1/1/c1'],
    ['e3', null],
    ['e4', 'it was given on 2026-03-07'],
    ['e5', 'it was lost (broken) on 2026-03-06'],
  ])('is open until it ends: %s', (ref, why) => {
    const not = whyNotOpen(eggIn(room({ P: waxbills(log) }, '2026-05-01'), `LW-1/1/${ref}`));
    expect(not && wordsOf(not)).toBe(why);
  });

  it('in an incubator is still its own pair’s to tell of', () => {
    const set =
      'date: 2026-03-05, laid: 3\ndate: 2026-03-06, pulled: e1\ndate: 2026-03-07, set: {incubator: e1}';
    const reach = (on: string) => eggsInReach(pairIn(room({ P: waxbills(set) }, on), 'LW-1'));
    expect(reach('2026-03-06').map(({ ref }) => ref)).toEqual(['e2', 'e3']);
    expect(reach('2026-03-07').map(({ ref }) => ref)).toEqual(['e2', 'e3', 'e1']);
  });
});

describe('an egg hatches', () => {
  const codes = (log: string, species = 'lavender waxbill') =>
    room({ P: journal('P-1', species, log) }, '2026-05-01').findings.map(({ code }) => code);

  // Half of the 14 days (species file of the room) is seven.
  it('after half the shortest sitting at the earliest', () => {
    const files = (on: string) => ({
      'species/ridge-finch.yaml': 'species: ridge finch\nincubation: 14-16\n',
      P: journal('P-1', 'ridge finch', `date: 2026-03-05, laid: 1, sitting\ndate: ${on}, hatched: e1`),
    });
    const found = (on: string) => room(files(on), '2026-05-01').findings.map(({ code }) => code);
    expect(found('2026-03-11')).toEqual(['hatched-too-soon']);
    expect(found('2026-03-12')).toEqual([]);
  });

  it('counted from the day on which it was set where it was taken away fresh, else from its laying', () => {
    const stored = (pulled: string) => `date: 2026-03-05, laid: 1\ndate: ${pulled}, pulled: e1
      date: 2026-03-10, set: e1\ndate: 2026-03-13, hatched: e1`;
    expect(codes(stored('2026-03-05'))).toEqual(['hatched-too-soon']);
    expect(codes(stored('2026-03-06'))).toEqual(['hatched-too-soon']);
    expect(codes(stored('2026-03-07'))).toEqual([]);
    // Never in store, but given to another pair the day after: it was sat on all the time.
    const moved = 'date: 2026-03-05, laid: 1\ndate: 2026-03-06, fostered: {incubator: e1}';
    expect(codes(`${moved}\ndate: 2026-03-10, fostered: {P-1: e1}\ndate: 2026-03-13, hatched: e1`)).toEqual(
      [],
    );
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
    const why = (ref: string) => {
      const not = whyNotAlive(birdIn(known, `LW-1/1/${ref}`));
      return typeof not === 'object' && not !== null ? wordsOf(not.why) : not;
    };
    expect([why('c2'), why('c1')]).toEqual(['it died on 2026-03-25', 'it left on 2026-06-01']);
  });

  it('fed by hand is still its own pair’s to tell of', () => {
    const hand =
      'date: 2026-03-05, laid: 2, sitting\ndate: 2026-03-18, hatched: 2\ndate: 2026-03-20, fostered: {hand: c2}';
    const pair = pairIn(room({ P: waxbills(hand) }, '2026-03-20'), 'LW-1');
    expect(youngInReach(pair).map(({ ref }) => ref)).toEqual(['c1', 'c2']);
  });

  it('out of the incubator is of its clutch, by the number of which it can be told', () => {
    const set =
      'date: 2026-03-05, laid: 3\ndate: 2026-03-06, set: {incubator: all}\ndate: 2026-03-18, hatched: 3';
    const known = room({ P: waxbills(`${set}\ndate: 2026-03-20, clutch: 1, died: 1`) }, '2026-03-20');
    expect(known.birds.filter(({ fate }) => fate?.kind === 'died')).toHaveLength(1);
  });

  it('was fed by hand if it was so for a while before it fed itself', () => {
    const reared = (entry: string) => {
      const log = `date: 2026-03-05, laid: 2, sitting\ndate: 2026-03-18, hatched: 2\n${entry}
        date: 2026-04-06, fledged: all\ndate: 2026-04-25, independent: all\ndate: 2026-05-01, moved: {c1: flight 5}`;
      const known = room({ P: waxbills(log, 'hen: LW-20-11') }, '2026-05-02');
      return ['LW-1/1/c1', 'LW-1/1/c2', 'LW-20-11'].map((name) => wasFedByHand(birdIn(known, name)));
    };
    expect(reared('')).toEqual([false, false, false]);
    const hand = 'date: 2026-03-20, fostered: {hand: c1}\ndate: 2026-03-24, fostered: {LW-1: c1}';
    expect(reared(hand)).toEqual([true, false, false]);
  });

  it('lives where its parents live, and there still when it feeds itself', () => {
    const known = room({ P: waxbills(log, head) }, '2026-04-25');
    expect(housingOf(birdIn(known, 'LW-1/1/c1'))).toBe('cage 3');
  });
});

describe('who is gone', () => {
  it('is told of by either journal or the bird list, and the later telling only adds what was missing', () => {
    const fate = (one: string, other: string, day = '2026-03-09') => {
      const known = room(
        {
          'birds.yaml': `birds:\n  - {id: LW-19-04, log: [{date: 2026-03-09, ${one}}]}\n`,
          P: waxbills(`date: 2026-03-01, paired\ndate: ${day}, ${other}`, 'cock: LW-19-04'),
        },
        '2026-04-01',
      );
      const { kind, cause, how } = birdIn(known, 'LW-19-04').fate as Record<string, unknown>;
      return [kind, cause ?? how ?? null, ...known.findings.map(({ code }) => code)];
    };
    expect(fate('died: old age', 'died: cock')).toEqual(['died', 'old age']);
    expect(fate('died', 'died: {old age: cock}')).toEqual(['died', 'old age']);
    expect(fate('died: old age', 'died: {old age: cock}')).toEqual(['died', 'old age']);
    expect(fate('died: old age', 'died: {fight: cock}')).toContain('dead-bird');
    expect(fate('died: old age', 'died: cock', '2026-03-10')).toEqual(['died', 'old age', 'dead-bird']);
    expect(fate('gone: sold', 'gone: {sold: cock}')).toEqual(['gone', 'sold']);
    expect(fate('gone: sold', 'gone: {given: cock}')).toContain('dead-bird');
    expect(fate('gone: sold', 'gone: {sold: cock}', '2026-03-10')).toEqual(['gone', 'sold', 'dead-bird']);
    expect(fate('gone: sold', 'died: cock')).toContain('dead-bird');
    expect(fate('gone: sold', 'gone: cock')).toEqual(['gone', 'sold']);
    expect(fate('died: fight', 'died: cock')).toEqual(['died', 'fight']);
  });
});

describe('a clutch', () => {
  it('whose first egg was misnamed is begun all the same, and takes eggs for six days from then', () => {
    const sizes = (on: string) => {
      const log = `date: 2026-03-05, laid: c1\ndate: ${on}, laid: 1`;
      return pairIn(room({ P: waxbills(log) }, on), 'LW-1').clutches.map(({ eggs }) => eggs.length);
    };
    expect(sizes('2026-03-11')).toEqual([1]);
    expect(sizes('2026-03-12')).toEqual([0, 1]);
  });

  it('takes eggs for six days after its last, and none once a chick is out', () => {
    const clutch = (on: string) => clutchIn(room({ P: waxbills(log) }, on), 'LW-1/1');
    expect(takesEggs(clutch('2026-03-11'), day('2026-03-11'))).toBe(true);
    expect(takesEggs(clutch('2026-03-12'), day('2026-03-12'))).toBe(false);
    expect(takesEggs(clutch('2026-03-18'), day('2026-03-05'))).toBe(false);
  });
});

describe('eggs that were lost in the incubator', () => {
  it('are not those out of which chicks hatch a month later: these are a clutch of which nobody wrote', () => {
    const log = `date: 2026-03-01, laid: 1\ndate: 2026-03-02, set: {incubator: all}
      date: 2026-03-10, lost: {clear: e1}\ndate: 2026-04-02, hatched: 3`;
    const known = room({ P: waxbills(log) }, '2026-04-02');
    expect(pairIn(known, 'LW-1').clutches.map(({ chicks }) => chicks.length)).toEqual([0, 3]);
    expect(known.findings).toEqual([]);
  });
});

describe('a species of which little is known', () => {
  it('is reckoned with as one that nobody knows in what its profile leaves out', () => {
    const files = {
      'species/own.yaml': 'species: ridge finch\nclutch: 4\n',
      P: journal('X-1', 'ridge finch', ''),
    };
    const { profile } = pairIn(room(files, '2026-03-05'), 'X-1');
    expect(profile).not.toBeNull();
    expect([incubation(profile), fledging(profile), independence(profile)]).toEqual([
      { low: 10, high: 25 },
      { low: 14, high: 40 },
      { low: 30, high: 60 },
    ]);
  });
});

describe('a species that nobody knows', () => {
  it('is reckoned with as the widest of the small cage birds', () => {
    const { profile } = pairIn(room({ P: journal('X-1', 'xyzzy', '') }, '2026-03-05'), 'X-1');
    expect(profile).toBeNull();
    expect([incubation(profile), fledging(profile), independence(profile), usualClutch(profile)]).toEqual([
      { low: 10, high: 25 },
      { low: 14, high: 40 },
      { low: 30, high: 60 },
      { low: 3, high: 6 },
    ]);
    expect(layingEndsAfter(profile)).toBe(6);
  });
});
