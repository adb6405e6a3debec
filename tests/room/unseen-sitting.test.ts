import { describe, expect, it } from 'vitest';
import { room } from '../rooms.ts';
import { birdIn, clutchIn, days, journal, pairIn, waxbills } from './facts.ts';
import { at, clutches } from './waxbill-log.ts';

// What must have been there though nobody wrote it down, and what a look, a voice or a count tells of it.

it('a hen that is told by number to sit on her next clutch sits on eggs that nobody wrote, though chicks lie in her nest', () => {
  const log = 'date: 2026-03-05, laid: 4, sitting\ndate: 2026-03-18, hatched: 4';
  expect(clutches(`${log}\ndate: 2026-04-01, sitting`)).toHaveLength(1);
  expect(clutches(`${log}\ndate: 2026-04-01, clutch: 2, sitting`)).toEqual([
    '1: 4 eggs, 4 chicks',
    '2: 1+ eggs, 0+ chicks',
  ]);
});

describe('a pair seen sitting', () => {
  it('sits on the youngest clutch that has an egg', () => {
    const sat = (log: string) =>
      pairIn(at(log), 'LW-1').clutches.map(({ sittings }) => sittings.map(({ by }) => by).join());
    const next = `date: 2026-03-05, laid: 2\ndate: 2026-03-06, lost: {broken: e1}
      date: 2026-04-10, laid: 1\ndate: 2026-04-12, sitting: hen`;
    expect(sat(next)).toEqual(['', 'hen']);
    expect(sat(`${next}\ndate: 2026-04-13, lost: {clear: 2/e1}\ndate: 2026-04-14, sitting: cock`)).toEqual([
      'cock',
      'hen',
    ]);
    expect(sat(`${next}\ndate: 2026-04-14, clutch: 1, sitting: both`)).toEqual(['both', 'hen']);
  });

  it('with nothing known in the nest has eggs nobody saw; found off it has none', () => {
    expect(clutches('date: 2026-03-05, sitting')).toEqual(['1: 1+ eggs, 0+ chicks']);
    expect(clutches('date: 2026-03-05, sitting: off')).toEqual([]);
    const over = 'date: 2026-03-05, laid: 1\ndate: 2026-03-20, lost: {clear: e1}';
    expect(clutches(`${over}\ndate: 2026-03-25, sitting`)).toEqual([
      '1: 1 eggs, 0 chicks',
      '2: 1+ eggs, 0+ chicks',
    ]);
    expect(clutches(`${over}\ndate: 2026-03-25, sitting: off`)).toEqual(['1: 1 eggs, 0 chicks']);
  });

  it('sits on an egg that is among those found under it, and no other beside them', () => {
    const sat = 'date: 2026-03-05, sitting';
    const found = (log: string) => [clutches(`${sat}\n${log}`), at(`${sat}\n${log}`).findings.length];
    expect(found('date: 2026-03-07, laid: 5')).toEqual([['1: 5 eggs, 0 chicks'], 0]);
    expect(found('date: 2026-03-07, laid: 1')).toEqual([['1: 1 eggs, 0 chicks'], 0]);
    expect(found('date: 2026-03-07, laid: 3+')).toEqual([['1: 3+ eggs, 0+ chicks'], 0]);
    expect(found('date: 2026-03-07, laid: [e1, e2, e3]')).toEqual([['1: 3 eggs, 0 chicks'], 0]);
    expect(found('date: 2026-03-07, laid: e2')).toEqual([['1: 2 eggs, 0 chicks'], 0]);
    // Found when the first of them may be about to hatch: still those she was seen on.
    expect(found('date: 2026-03-15, laid: 5')).toEqual([['1: 5 eggs, 0 chicks'], 0]);
    // What comes after the first look is new.
    expect(found('date: 2026-03-07, laid: 2\ndate: 2026-03-08, laid: 1')).toEqual([
      ['1: 3 eggs, 0 chicks'],
      0,
    ]);
    // Held to the lamp, weighed or measured, it was seen before.
    for (const told of ['candled: {fertile: e1}', 'weighed: {e1: 1.0}', 'measured: {e1: 14.5 x 10.8}'])
      expect(found(`date: 2026-03-08, ${told}\ndate: 2026-03-09, laid: 2`), told).toEqual([
        ['1: 3+ eggs, 0+ chicks'],
        0,
      ]);
  });

  it('laid what is found under her in the days before: she sat on the first of them', () => {
    const { eggs } =
      pairIn(at('date: 2026-03-05, sitting\ndate: 2026-03-07, laid: 4'), 'LW-1').clutches[0] ?? {};
    expect(eggs?.map(({ laid }) => days(laid))).toEqual([
      '02-20…03-04',
      '02-20…03-05',
      '02-21…03-06',
      '02-22…03-07',
    ]);
  });

  it('broods while there are nestlings; when all are out it sits again', () => {
    const brood = 'date: 2026-03-05, laid: 1, sitting\ndate: 2026-03-18, hatched: e1';
    expect(clutches(`${brood}\ndate: 2026-03-20, sitting`)).toEqual(['1: 1 eggs, 1 chicks']);
    expect(clutches(`${brood}\ndate: 2026-04-06, fledged: c1\ndate: 2026-04-10, sitting`)).toEqual([
      '1: 1 eggs, 1 chicks',
      '2: 1+ eggs, 0+ chicks',
    ]);
  });

  it('on guests’ eggs alone opens no clutch of its own', () => {
    const files = {
      P: waxbills('date: 2026-03-05, laid: 2\ndate: 2026-03-06, fostered: {BF-1: all}'),
      Q: journal('BF-1', 'bengalese finch', 'date: 2026-03-07, sitting'),
    };
    expect(pairIn(room(files, '2026-03-10'), 'BF-1').clutches).toEqual([]);
  });

  it('in a clutch by its number, though all before it is over', () => {
    const over = 'date: 2026-03-05, laid: 1\ndate: 2026-03-20, lost: {clear: e1}';
    expect(clutches(`${over}\ndate: 2026-03-25, clutch: 4, sitting`)).toEqual([
      '1: 1 eggs, 0 chicks',
      '4: 1+ eggs, 0+ chicks',
    ]);
  });
});

describe('a chick that died', () => {
  const heard = 'date: 2026-03-22, sitting: hen\ndate: 2026-04-07, heard';
  const living = (log: string) =>
    [...pairIn(at(log), 'LW-1').here.young].map(({ ref, placeholder }) => `${ref}${placeholder ? '+' : ''}`);

  it('where young were only heard leaves others that may be there, and is itself one that was seen', () => {
    const one = `${heard}\ndate: 2026-04-20, died: 1`;
    expect(living(one)).toEqual(['c2+']);
    expect(birdIn(at(one), 'LW-1/1/c1').placeholder).toBe(false);
    expect(living(`${heard}\ndate: 2026-04-20, died: c1`)).toEqual(['c2+']);
    expect(living(`${one}\ndate: 2026-04-21, died: 1`)).toEqual(['c3+']);
    expect(living(`${one}\ndate: 2026-04-21, died: all`)).toEqual([]);
  });

  it('leaves nobody where the eggs were counted: those that are left stand for the others', () => {
    expect(
      living('date: 2026-03-22, laid: 4, sitting\ndate: 2026-04-05, heard\ndate: 2026-04-08, died: 1'),
    ).toEqual([]);
  });

  it('leaves nobody where the chicks were counted, though nobody saw their eggs', () => {
    const two = 'date: 2026-03-10, sitting: hen\ndate: 2026-03-23, hatched: 2';
    expect(living(`${two}\ndate: 2026-03-28, died: 2`)).toEqual([]);
    expect(living(`${two}\ndate: 2026-03-28, died: c1\ndate: 2026-03-29, died: c2`)).toEqual([]);
  });

  it('leaves those that may be there with its brother, until he dies too or is given away', () => {
    const two = `${heard}\ndate: 2026-04-10, weighed: {c2: 5.1}`;
    expect(living(`${two}\ndate: 2026-04-12, died: c1`)).toEqual(['c2+']);
    expect(living(`${two}\ndate: 2026-04-12, died: c1\ndate: 2026-04-14, died: c2`)).toEqual(['c3+']);
    const hand = `${two}\ndate: 2026-04-11, fostered: {hand: c2}\ndate: 2026-04-12, died: c1`;
    expect(living(hand)).toEqual(['c3+']);
    // Nobody saw the egg that the third came of either.
    expect(clutchIn(at(hand), 'LW-1/1').eggs.map(({ assumed }) => assumed)).toEqual([true, true, true]);
  });

  it('leaves nobody in the nest that it had been taken out of', () => {
    expect(living(`${heard}\ndate: 2026-04-10, fostered: {hand: c1}\ndate: 2026-04-12, died: c1`)).toEqual(
      [],
    );
  });

  it('died no earlier than it can have hatched', () => {
    // Sat on since 4 April at the latest, at least eleven days (species profile): not before the 13th.
    const log = `date: 2026-04-01, laid: 1\ndate: 2026-04-04, laid: 3, sitting\ndate: 2026-04-16, heard\ndate: 2026-04-22, died: 1`;
    const chick = birdIn(at(log), 'LW-1/1/c1');
    expect(chick.fate?.kind === 'died' && days(chick.fate.span)).toBe('04-13…04-22');
  });
});
