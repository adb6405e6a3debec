import { describe, expect, it } from 'vitest';
import { hostClutch } from '../../src/room/lives.ts';
import { clutchId, type EggPlace } from '../../src/room/model.ts';
import { type Files, room } from '../rooms.ts';
import { birdIn, codes, days, eggIn, journal, waxbills } from './facts.ts';
import { doubts } from './guests.ts';

const known = (files: Files) => room(files, '2026-07-01');

/** Where an egg was, with the day on which it came there. */
const way = (files: Files, name: string) =>
  eggIn(known(files), name).places.map(({ from, place }) => `${days({ from, to: from })} ${where(place)}`);
const where = (place: EggPlace) => (place.kind === 'nest' ? place.pair.id : place.kind);

/** Where a chick lived, with the day on which it came there and who fed it. */
const life = (files: Files, name: string) =>
  birdIn(known(files), name).stays.map(
    ({ from, housing, nest }) => `${days({ from, to: from })} ${housing} ${nest?.id ?? '-'}`,
  );

const five = 'date: 2026-03-05, laid: 5, sitting';
const chicks = `${five}\ndate: 2026-03-18, hatched: 4`;
const bengalese = journal('BF-1', 'bengalese finch', 'date: 2026-03-04, laid: 3, sitting');

describe('whoever comes home', () => {
  const second = 'date: 2026-04-10, laid: 2';

  it('lives with its own clutch again, though the next is begun: an egg', () => {
    const log = `date: 2026-04-05, laid: 1, site: left\ndate: 2026-04-06, site: left, fostered: {incubator: all}
      date: 2026-04-07, laid: 2, site: right
      date: 2026-04-12, fostered: {LW-1: 1/e1}`;
    const stood = known({ P: waxbills(log) });
    const host = hostClutch(eggIn(stood, 'LW-1/1/e1'));
    expect(host && clutchId(host)).toBe('LW-1/1');
  });

  it('lives with its own clutch again, though the next is begun: a chick', () => {
    const log = `${chicks}\ndate: 2026-03-20, fostered: {hand: all}
      ${second.replace('04-10', '03-30')}
      date: 2026-04-01, fostered: {LW-1: 1/c1}`;
    const stood = known({ P: waxbills(log) });
    const host = hostClutch(birdIn(stood, 'LW-1/1/c1'));
    expect(host && clutchId(host)).toBe('LW-1/1');
  });

  it('comes from the hand as a rule: of a chick with another pair that one’s journal tells', () => {
    const log = `${chicks}\ndate: 2026-03-20, fostered: {BF-1: c1, hand: c2}\ndate: 2026-03-24, fostered: {LW-1: 1}`;
    const files = { P: waxbills(log), Q: bengalese };
    expect(life(files, 'LW-1/1/c2').at(-1)).toMatch(/^03-24 .* LW-1$/);
    expect(life(files, 'LW-1/1/c1').at(-1)).toMatch(/^03-20 .* BF-1$/);
  });

  it('may be called by its egg beside one that is called by itself', () => {
    const log = `${chicks}\ndate: 2026-03-20, fostered: {BF-1: [c1, e2]}`;
    const files = { P: waxbills(log), Q: bengalese };
    const feeders = ['c1', 'c2', 'c3'].map(
      (ref) => birdIn(known(files), `LW-1/1/${ref}`).stays.at(-1)?.nest?.id,
    );
    expect([feeders, codes(known(files))]).toEqual([['BF-1', 'BF-1', 'LW-1'], []]);
  });

  it('may be a chick while an egg is still in the incubator', () => {
    const log = `${chicks}\ndate: 2026-03-19, fostered: {incubator: e5}\ndate: 2026-03-20, fostered: {hand: c4}
      date: 2026-03-24, fostered: {LW-1: all}`;
    const files = { P: waxbills(log) };
    expect(life(files, 'LW-1/1/c4').at(-1)).toMatch(/^03-24 .* LW-1$/);
    expect(codes(known(files))).toEqual([]);
  });

  it('may be an egg that lay in store before it was put into the incubator', () => {
    const log = `date: 2026-03-05, laid: 1, pulled: e1\ndate: 2026-03-07, set: {incubator: e1}
      date: 2026-03-12, fostered: {LW-1: all}`;
    expect(way({ P: waxbills(log) }, 'LW-1/1/e1').at(-1)).toBe('03-12 LW-1');
  });

  it('is nobody where the eggs that were away came to nothing', () => {
    const log = `${five}\ndate: 2026-03-06, fostered: {incubator: [e4, e5]}
      date: 2026-03-10, lost: {clear: [e4, e5]}\ndate: 2026-03-12, fostered: {LW-1: all}`;
    expect(codes(known({ P: waxbills(log) }))).toEqual(['fostered-to-itself']);
  });

  it('comes back to the cage of those that feed it, where it had been taken out of it', () => {
    const log = `${chicks}\ndate: 2026-03-28, moved: {c3: cage 9}\ndate: 2026-03-29, fostered: {LW-1: c3}`;
    const files = { P: waxbills(log, 'housing: cage 3') };
    expect(life(files, 'LW-1/1/c3')).toEqual(['03-18 cage 3 LW-1', '03-28 cage 9 LW-1', '03-29 cage 3 LW-1']);
    expect(codes(known(files))).toEqual([]);
  });
});

describe('an egg that is given away', () => {
  it('out of the incubator lives with the clutch of those who sit on it', () => {
    const log = `${five}\ndate: 2026-03-06, set: {incubator: e1}\ndate: 2026-03-08, fostered: {BF-1: e1}`;
    const host = hostClutch(eggIn(known({ P: waxbills(log), Q: bengalese }), 'LW-1/1/e1'));
    expect(host && clutchId(host)).toBe('BF-1/1');
  });

  it('is a guest that goes home, where one of that pair lies there; it is asked about', () => {
    const files = {
      P: waxbills(`${five}\ndate: 2026-03-12, fostered: {BF-1: 1}`),
      Q: journal(
        'BF-1',
        'bengalese finch',
        'date: 2026-03-04, laid: 3, sitting\ndate: 2026-03-09, fostered: {LW-1: e3}',
      ),
    };
    expect(way(files, 'BF-1/1/e3')).toEqual(['03-04 BF-1', '03-09 LW-1', '03-12 BF-1']);
    expect(way(files, 'LW-1/1/e1')).toHaveLength(1);
    expect(doubts(files)).toEqual([
      'fostered: taken as BF-1/1/e3, but e1, e2, e3, e4, e5 would do as well and count differently. name them: refs such as e1 or c2',
    ]);
  });

  it('came on the first day that is told of it, when the same is written once more', () => {
    const log = `${five}\ndate: 2026-03-06, fostered: {BF-1: e5}\ndate: 2026-03-09, fostered: {BF-1: e5}`;
    expect(way({ P: waxbills(log), Q: bengalese }, 'LW-1/1/e5')).toEqual(['03-05 LW-1', '03-06 BF-1']);
  });

  it('comes out of the incubator where the nest is empty, and into it from the hand', () => {
    const log = (more: string) => ({
      P: waxbills(`date: 2026-03-05, laid: 1
        date: 2026-03-06, laid: 1
        date: 2026-03-07, laid: 1
        date: 2026-03-08, fostered: {incubator: [e1, e2], hand: e3}\ndate: 2026-03-10, fostered: ${more}`),
    });
    const into = log('{incubator: all}');
    expect(way(into, 'LW-1/1/e1')).toEqual(['03-05 LW-1', '03-08 incubator']);
    expect(way(into, 'LW-1/1/e3')).toEqual(['03-07 LW-1', '03-08 hand', '03-10 incubator']);
    expect(way(log('{hand: 1}'), 'LW-1/1/e1').at(-1)).toBe('03-10 hand');
    const again = log('{incubator: e3}\ndate: 2026-03-12, fostered: {incubator: all}');
    expect(way(again, 'LW-1/1/e3').at(-1)).toBe('03-10 incubator');
  });

  it('is named in what is said where the nest is empty and another pair sits on it', () => {
    const log = `date: 2026-03-05, laid: 2\ndate: 2026-03-06, fostered: {BF-1: all}\ndate: 2026-03-08, fostered: {hand: 1}`;
    expect(doubts({ P: waxbills(log), Q: bengalese }).join()).toMatch(/e1, e2/);
  });
});

it('guests that were heard and never counted: each that leaves the nest later hatched of the eggs brought there', () => {
  const own = `date: 2026-03-01, laid: 1\n${[2, 3, 4, 5].map((n) => `date: 2026-03-0${n}, laid: 1`).join('\n')}
    date: 2026-03-05, sitting
    date: 2026-03-07, fostered: {BF-1: all}`;
  const foster = journal(
    'BF-1',
    'bengalese finch',
    `date: 2026-02-01, paired
    date: 2026-03-17, heard
    date: 2026-03-22, died: 1
    date: 2026-04-08, fledged: 1
    date: 2026-04-09, fledged: 1`,
  );
  const stood = known({ P: waxbills(own), Q: foster });
  const chicks = ['c1', 'c2', 'c3'].map((ref) => birdIn(stood, `LW-1/1/${ref}`));
  expect(chicks.map(({ fate, fledged }) => fate?.kind ?? (fledged && days(fledged.span)))).toEqual([
    'died',
    '04-08',
    '04-09',
  ]);
  expect(codes(stood)).toEqual([]);
  expect(stood.pairs.find(({ id }) => id === 'BF-1')?.clutches).toEqual([]);
});
