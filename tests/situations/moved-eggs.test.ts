import { describe, expect, it } from 'vitest';
import { agenda, room } from '../rooms.ts';
import {
  birdIn,
  clutchIn,
  codes,
  due,
  fates,
  journal,
  morning,
  pairIn,
  spell,
  warned,
  waxbills,
} from './morning.ts';

describe('eggs fostered to another pair, and the chicks brought home', () => {
  const files = {
    a: waxbills(
      `
      date: 2026-03-01, laid: 1
      date: 2026-03-02, laid: 1
      date: 2026-03-03, laid: 1
      date: 2026-03-04, laid: 1, sitting
      date: 2026-03-07, fostered: {BF-1: all}
    `,
      'housing: cage 1',
    ),
    b: journal(
      'BF-1',
      'bengalese finch',
      `
      date: 2026-03-03, laid: 1
      date: 2026-03-04, laid: 1
      date: 2026-03-05, laid: 1, sitting
      date: 2026-03-15, checked
      date: 2026-03-16, hatched: [LW-1/1/e1, LW-1/1/e2]
      date: 2026-03-24, fostered: {LW-1: [LW-1/1/c1, LW-1/1/c2]}
    `,
      'housing: cage 2',
    ),
  };

  it('are in the foster’s nest: seven eggs there, none at home, each in the record of its own clutch', () => {
    const known = room(files, '2026-03-07');
    expect([pairIn(known, 'BF-1').here.eggs.size, pairIn(known, 'LW-1').here.eggs.size]).toEqual([7, 0]);
    expect(['BF-1/1', 'LW-1/1'].map((name) => clutchIn(known, name).eggs.length)).toEqual([3, 4]);
  });

  it('leave their own pair nothing to do', () => {
    for (const task of ['next-egg', 'confirm-sitting', 'candle', 'live-food', 'hatch', 'unhatched'])
      expect(spell(files, task, 'LW-1', '2026-03-08', '2026-03-23'), task).toEqual([]);
  });

  it('are candled in the foster’s nest, five days after it began to sit', () => {
    expect(due(files, '2026-03-09', 'BF-1')).toEqual([]);
    expect(due(files, '2026-03-10', 'BF-1')).toEqual(['BF-1 candle']);
  });

  // Looked at the day before, so hatched on the 16th: a day before the ring age of seven days is the 22nd.
  it('are ringed where they grow up, under their own names', () => {
    expect(due(files, '2026-03-21', 'BF-1').filter((line) => line.includes('ring'))).toEqual([]);
    expect(due(files, '2026-03-22', 'BF-1')).toContain('BF-1 ring LW-1/1/c1 LW-1/1/c2');
  });

  it('home again are their own pair’s to feed, and the foster’s no longer', () => {
    expect(due(files, '2026-03-24', 'LW-1')).toContain('LW-1 ring c1 c2');
    const known = room(files, '2026-03-24');
    expect([...pairIn(known, 'LW-1').here.young].map(({ ref }) => ref)).toEqual(['c1', 'c2']);
    expect(pairIn(known, 'BF-1').here.young.size).toBe(0);
    expect(birdIn(known, 'LW-1/1/c1').stays.map(({ nest }) => nest?.id)).toEqual(['BF-1', 'LW-1']);
    expect(fates(clutchIn(known, 'LW-1/1'))).toEqual(['e1 hatched', 'e2 hatched', 'e3 open', 'e4 open']);
    expect(codes(known)).toEqual([]);
  });
});

describe('eggs taken as they are laid, dummies in their place', () => {
  const laid = `
    date: 2026-03-01, laid: 1, pulled: e1
    date: 2026-03-02, laid: 1, pulled: e2
    date: 2026-03-03, laid: 1, pulled: e3
  `;

  // Pulled from 1 March on: four days after is the 5th, ten the 11th.
  it('are asked for from the fourth day, and given up after the tenth', () => {
    expect(spell({ a: waxbills(laid) }, 'set-back', 'LW-1', '2026-03-01', '2026-03-20')).toEqual([
      '03-05 … 03-11',
    ]);
    expect(due({ a: waxbills(laid) }, '2026-03-05')).toEqual(['LW-1 set-back e1 e2 e3']);
  });

  // Common practice: five days in store are said, seven said louder.
  it('are warned of from five days in store, louder from seven', () => {
    const levels = (on: string) => warned({ a: waxbills(laid) }, 'stored', on).map(({ level }) => level);
    expect(['2026-03-05', '2026-03-06', '2026-03-07', '2026-03-08'].map(levels)).toEqual([
      [],
      ['note'],
      ['note'],
      ['watch'],
    ]);
  });

  it('set with the fourth are sat on from that day together, and are not asked for again', () => {
    const files = { a: waxbills(`${laid}\ndate: 2026-03-04, laid: 1, set: all, sitting`) };
    expect(spell(files, 'set-back', 'LW-1', '2026-03-04', '2026-03-20')).toEqual([]);
    // Sitting on the 4th, candling on day 5 or 6.
    expect(spell(files, 'candle', 'LW-1', '2026-03-04', '2026-03-20')).toEqual(['03-09 … 03-10']);
    expect(pairIn(room(files, '2026-03-04'), 'LW-1').here.eggs.size).toBe(4);
  });

  it('set late under another pair are that pair’s work from then on', () => {
    const files = {
      a: waxbills(`${laid}\ndate: 2026-03-06, set: {BF-1: all}`),
      b: journal('BF-1', 'bengalese finch', 'date: 2026-03-05, laid: 1\ndate: 2026-03-06, laid: 1'),
    };
    const known = room(files, '2026-03-06');
    expect([pairIn(known, 'BF-1').here.eggs.size, pairIn(known, 'LW-1').here.eggs.size]).toEqual([5, 0]);
    expect(due(files, '2026-03-08', 'LW-1')).toEqual([]);
    expect(morning(files, '2026-03-10').map(({ kind }) => kind)).toEqual([]);
  });
});

describe('eggs set in an incubator', () => {
  const files = {
    a: waxbills(`
      date: 2026-03-01, laid: 1
      date: 2026-03-02, laid: 1
      date: 2026-03-03, laid: 1, pulled: all
      date: 2026-03-05, set: {incubator: all}
    `),
  };

  // Warm from the 5th: candling on day 5 or 6. A look there costs no bird its peace, so a late one may be asked for.
  it('are candled by the days that they are warm', () => {
    expect(due(files, '2026-03-09')).not.toContain('LW-1 candle');
    expect(due(files, '2026-03-10')).toContain('LW-1 candle');
  });

  it('hatch there by count, in the record of their clutch and in the hands of nobody’s pair', () => {
    const hatched = { a: `${files.a}\n  - {date: 2026-03-17, hatched: 2}` };
    const known = room(hatched, '2026-03-17');
    expect(fates(clutchIn(known, 'LW-1/1'))).toEqual(['e1 hatched', 'e2 hatched', 'e3 open']);
    expect(birdIn(known, 'LW-1/1/c1').stays.at(-1)).toMatchObject({ housing: 'hand', nest: null });
    expect(codes(known)).toEqual([]);
  });
});

// Gouldian finches sit 13–16 d and rear without live food, lavender waxbills 11–13 d and never without it (the profiles).
describe('eggs of two species under one foster pair', () => {
  const files = {
    B: journal(
      'BF-1',
      'bengalese finch',
      'date: 2026-03-01, laid: 4, sitting\ndate: 2026-03-02, lost: {removed: all}',
    ),
    G: journal('GF-1', 'gouldian finch', 'date: 2026-03-01, laid: 1\ndate: 2026-03-02, fostered: {BF-1: e1}'),
    L: journal('LW-1', 'lavender waxbill', 'date: 2026-03-12, laid: 1, fostered: {BF-1: e1}'),
  };

  // e1 was laid on the 12th: 13 d and a fortnight later it cannot have hatched any more.
  it('want live food before those hatch that are reared on it, whatever else hatched or is due before', () => {
    expect(spell(files, 'live-food', 'BF-1', '2026-03-01', '2026-04-10')).toEqual(['03-21 … 04-08']);
    const out = { ...files, B: `${files.B}\n  - {date: 2026-03-16, hatched: GF-1/1/e1}` };
    expect(spell(out, 'live-food', 'BF-1', '2026-03-16', '2026-04-10')).toEqual(['03-21 … 04-08']);
    const [task] = agenda(out, '2026-03-21', 0).filter((one) => one.task === 'live-food');
    expect(task).toMatchObject({ who: ['LW-1/1/e1'], species: 'lavender waxbill' });
  });

  it('are one nest that is expected to hatch, from the first to the last', () => {
    const [task] = agenda(files, '2026-03-16', 0).filter((one) => one.task === 'hatch');
    expect(task).toMatchObject({ who: null });
  });
});

describe('a power cut, with eggs and young chicks in the incubator', () => {
  const files = (own: string) => ({
    a: waxbills(
      `
      date: 2026-03-01, laid: 1
      date: 2026-03-02, laid: 1
      date: 2026-03-03, laid: 1
      date: 2026-03-04, laid: 1
      date: 2026-03-05, set: {incubator: all}
      date: 2026-03-16, hatched: 2
      ${own}
    `,
      'housing: cage 1',
    ),
    b: journal('BF-1', 'bengalese finch', 'date: 2026-03-04, laid: 4, sitting: both', 'housing: cage 2'),
  });
  const under = (own: string) => {
    const { here } = pairIn(room(files(own), '2026-03-17'), 'BF-1');
    return [...here.eggs, ...here.young]
      .filter(({ clutch }) => clutch?.pair.id === 'LW-1')
      .map(({ ref }) => ref);
  };

  it('brings all of them under a pair that sits: the chicks first, then the eggs', () => {
    expect(under('date: 2026-03-17, time: 06:00, fostered: {BF-1: all}')).toEqual(['c1', 'c2']);
    const both =
      'date: 2026-03-17, time: 06:00, fostered: {BF-1: all}\n date: 2026-03-17, time: 06:05, fostered: {BF-1: all}';
    expect(under(both)).toEqual(['e3', 'e4', 'c1', 'c2']);
    expect(codes(room(files(both), '2026-03-17'))).toEqual([]);
  });

  it('has the pair that took them see to their first feed that morning', () => {
    const taken = files('date: 2026-03-17, fostered: {BF-1: all}');
    expect(due(taken, '2026-03-17', 'BF-1')).toContain('BF-1 first-feed LW-1/1/c1 LW-1/1/c2');
    expect(warned(taken, 'live-food-missing', '2026-03-17')).toMatchObject([{ pair: 'BF-1' }]);
  });
});

it('eggs of another species that hatch before the nest’s own give the hatch its name and its days; the whole nest is asked after', () => {
  // Star finches hatch after 12 to 14 days, Bengalese finches after 15 or 16 (species profiles).
  const given = {
    A: journal(
      'SF-1',
      'star finch',
      'date: 2026-03-01, laid: 1\ndate: 2026-03-04, laid: 3, sitting\ndate: 2026-03-06, fostered: {BF-1: all}',
    ),
    B: journal('BF-1', 'Bengalese finch', 'date: 2026-03-04, laid: 1\ndate: 2026-03-07, laid: 3, sitting'),
  };
  const hatch = agenda(given, '2026-03-14').find(({ task }) => task === 'hatch');
  expect(hatch).toMatchObject({ pair: 'BF-1', species: 'star finch', who: null });
  expect(hatch?.why).toMatch(/^sat on since 3–5 Mar \+ 12–14 d/);
});
