import { describe, expect, it } from 'vitest';
import { formatDay } from '../../src/days.ts';
import { candlingDay, fertilityOf, hatchRank, lampSays } from '../../src/room/fertility.ts';
import type { Egg } from '../../src/room/model.ts';
import { day, room } from '../rooms.ts';
import { clutchIn, journal, pairIn, waxbills } from './facts.ts';

const laid = 'date: 2026-03-01, laid: 1\ndate: 2026-03-05, laid: 4, sitting';

/** The eggs from the likeliest to hatch to the least. */
function likeliest(more: string): string[] {
  const { eggs } = clutchIn(room({ P: waxbills(`${laid}\n${more}`) }, '2026-03-16'), 'LW-1/1');
  const on = day('2026-03-16');
  const rank = (egg: Egg) => hatchRank(egg, { from: on, to: on });
  return [...eggs].sort((a, b) => rank(a) - rank(b)).map(({ ref }) => ref);
}

describe('which egg is likeliest to hatch', () => {
  it('is the pipped one, then fertile, then unseen, then dead, and a clear one last', () => {
    const seen = 'date: 2026-03-11, candled: {clear: e1, dead: e2, fertile: [e4, e5]}';
    expect(likeliest(`${seen}\ndate: 2026-03-15, pipped: e5`)).toEqual(['e5', 'e4', 'e3', 'e2', 'e1']);
  });

  it('is judged by the latest look at the lamp', () => {
    const twice =
      'date: 2026-03-09, candled: {clear: [e1, e2, e3, e4, e5]}\ndate: 2026-03-12, candled: {fertile: e3}';
    expect(likeliest(twice)[0]).toBe('e3');
  });

  it('an unsure lamp is as good as none', () => {
    expect(likeliest('date: 2026-03-11, candled: {unsure: e1, clear: e2}')).toEqual([
      'e1',
      'e3',
      'e4',
      'e5',
      'e2',
    ]);
  });

  it('hatching beats every lamp: a clear egg named by its ref hatched, with a word about it', () => {
    const log = `${laid}\ndate: 2026-03-11, candled: {clear: e1}\ndate: 2026-03-16, hatched: e1`;
    const known = room({ P: waxbills(log) }, '2026-03-16');
    expect(clutchIn(known, 'LW-1/1').eggs[0]?.fate?.kind).toBe('hatched');
    expect(known.findings.map(({ code }) => code)).toEqual(['hatched-though-clear']);
  });
});

describe('which of the eggs that nobody sat on hatched in the hand', () => {
  it('nobody can tell: the first is taken, before one that was set late', () => {
    const warmed = ['01', '02', '03']
      .map((on, i) => `date: 2026-03-${on}, laid: 1\ndate: 2026-03-${on}, fostered: {hand: e${i + 1}}`)
      .join('\n');
    const fates = (more: string) =>
      clutchIn(room({ P: waxbills(`${warmed}\n${more}`) }, '2026-03-20'), 'LW-1/1').eggs.map(
        ({ fate }) => fate?.kind ?? 'open',
      );
    expect(fates('date: 2026-03-15, hatched: 1')).toEqual(['hatched', 'open', 'open']);
    expect(fates('date: 2026-03-10, set: {incubator: e1}\ndate: 2026-03-15, hatched: 1')).toEqual([
      'open',
      'hatched',
      'open',
    ]);
  });
});

describe('whether an egg is fertile', () => {
  /** What is known of each egg after this, on 2026-04-10. Laid 1 and 2–5 March, sat on from the last: candling from 10 March. */
  function known(more: string): (string | null)[] {
    const { eggs } = clutchIn(room({ P: waxbills(`${laid}\n${more}`) }, '2026-04-10'), 'LW-1/1');
    return eggs.map(fertilityOf);
  }

  it.each([
    ['nobody looked', '', [null, null, null, null, null]],
    [
      'the lamp told on the day',
      'date: 2026-03-10, candled: {fertile: e1, clear: e2, dead: e3, unsure: e4}',
      ['fertile', 'clear', 'fertile', null, null],
    ],
    [
      'clear is only unsure before the egg’s own candling day',
      'date: 2026-03-09, candled: {fertile: e1, clear: e2}',
      ['fertile', null, null, null, null],
    ],
    [
      'the latest look wins',
      'date: 2026-03-10, candled: {fertile: e1, clear: e2}\ndate: 2026-03-13, candled: {clear: e1, fertile: e2}',
      ['clear', 'fertile', null, null, null],
    ],
    [
      'an unsure look takes nothing back',
      'date: 2026-03-10, candled: {fertile: e1, clear: e2}\ndate: 2026-03-13, candled: {unsure: [e1, e2]}',
      ['fertile', 'clear', null, null, null],
    ],
    [
      'hatching beats the lamp',
      'date: 2026-03-10, candled: {clear: e1}\ndate: 2026-03-17, hatched: e1',
      ['fertile', null, null, null, null],
    ],
    [
      'causes: clear and dead-in-shell tell, others as candled',
      'date: 2026-03-10, candled: {fertile: [e4, e1]}\ndate: 2026-03-20, lost: {clear: e1, dead-in-shell: e2, addled: e3, broken: e4, undeveloped: e5}',
      ['clear', 'fertile', null, 'fertile', null],
    ],
    ['pipped is fertile', 'date: 2026-03-17, pipped: e3', [null, null, 'fertile', null, null]],
  ])('%s', (_, more, expected) => {
    expect(known(more)).toEqual(expected);
  });

  it('an egg laid after sitting began has its own later day', () => {
    const log =
      'date: 2026-03-01, laid: 1\ndate: 2026-03-02, laid: 1\ndate: 2026-03-03, laid: 1, sitting\ndate: 2026-03-05, laid: 1\ndate: 2026-03-08, candled: {clear: all}';
    const { eggs } = clutchIn(room({ P: waxbills(log) }, '2026-03-20'), 'LW-1/1');
    expect(eggs.map(fertilityOf)).toEqual(['clear', 'clear', 'clear', null]);
    expect(eggs.map((egg) => formatDay(candlingDay(egg, day('2026-03-20')) ?? 0))).toEqual([
      '2026-03-08',
      '2026-03-08',
      '2026-03-08',
      '2026-03-10',
    ]);
  });

  it('an egg in store has no candling day: the lamp tells nothing of it', () => {
    const log = 'date: 2026-03-01, laid: 1, pulled: e1\ndate: 2026-03-12, candled: {clear: e1}';
    const { eggs } = clutchIn(room({ P: waxbills(log) }, '2026-03-20'), 'LW-1/1');
    expect(eggs.map((egg) => [candlingDay(egg, day('2026-03-20')), fertilityOf(egg)])).toEqual([
      [null, null],
    ]);
  });
});

describe('what the lamp said', () => {
  const said = (more: string) =>
    clutchIn(room({ P: waxbills(`${laid}\n${more}`) }, '2026-04-10'), 'LW-1/1').eggs.map(lampSays);

  it('is the latest look’s word, and clear is only unsure before the egg’s own candling day', () => {
    // Laid 1 and 2–5 March and sat on from the last: five days later it is the 10th.
    expect(said('date: 2026-03-09, candled: {clear: e1, dead: e2, fertile: e3, unsure: e4}')).toEqual([
      'unsure',
      'dead',
      'fertile',
      'unsure',
      null,
    ]);
    expect(said('date: 2026-03-10, candled: {clear: e1}')[0]).toBe('clear');
    expect(said('date: 2026-03-10, candled: {clear: e1}\ndate: 2026-03-12, candled: {fertile: e1}')[0]).toBe(
      'fertile',
    );
  });

  it('is not taken back by what happens to the egg later', () => {
    const clear = 'date: 2026-03-10, candled: {clear: e1}';
    const stored = 'date: 2026-03-11, pulled: e1\ndate: 2026-03-25, set: e1';
    expect(said(`${clear}\n${stored}`)[0]).toBe('clear');
    expect(said(`date: 2026-03-08, pulled: e1\ndate: 2026-03-10, set: e1, candled: {clear: e1}`)[0]).toBe(
      'unsure',
    );
  });

  it('of an egg that nobody sits on is nothing: clear in store is unsure', () => {
    expect(said('date: 2026-03-02, pulled: e1\ndate: 2026-03-12, candled: {clear: e2}')[1]).toBe('clear');
    const cold = room(
      { P: waxbills('date: 2026-03-01, laid: 1, pulled: e1\ndate: 2026-03-12, candled: {clear: e1}') },
      '2026-04-10',
    );
    expect(clutchIn(cold, 'LW-1/1').eggs.map(lampSays)).not.toContain('clear');
  });
});

describe('a chick that a look finds beside eggs of two clutches', () => {
  /** Which eggs hatched, of bengalese finches, that sit 14 to 16 days. */
  const hatched = (log: string) =>
    pairIn(room({ P: journal('BF-1', 'bengalese finch', log) }, '2026-07-01'), 'BF-1').clutches.map(
      ({ eggs }) => eggs.flatMap(({ ref, fate }) => (fate?.kind === 'hatched' ? ref : [])).join(' '),
    );

  it('came of one whose time was over rather than of one that was not sat on for long enough', () => {
    const two =
      'date: 2026-03-01, laid: 1, sitting\ndate: 2026-03-19, checked: {eggs: 1}\ndate: 2026-03-20, laid: 1';
    expect(hatched(`${two}\ndate: 2026-03-27, checked\ndate: 2026-03-28, checked: {chicks: 1}`)).toEqual([
      'e1',
      '',
    ]);
  });

  it('came of one that may be old enough rather than of one whose time was over', () => {
    const found = 'date: 2026-03-01, laid: 1\ndate: 2026-03-19, laid: 2';
    expect(hatched(`${found}\ndate: 2026-03-24, checked: {chicks: 1}`)).toEqual(['', 'e1']);
  });
});

it('of a species of which nobody knows when the lamp tells, it does from the fifth day on', () => {
  const clear = (on: string) => {
    const log = `date: 2026-04-13, laid: 1, sitting\ndate: 2026-04-${on}, candled: {clear: e1}`;
    return lampSays(
      clutchIn(room({ P: journal('X-1', 'unheard-of finch', log) }, '2026-07-01'), 'X-1/1').eggs[0] as Egg,
    );
  };
  expect([clear('17'), clear('18')]).toEqual(['unsure', 'clear']);
});
