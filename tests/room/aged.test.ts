import { describe, expect, it } from 'vitest';
import type { Span } from '../../src/days.ts';
import { room } from '../rooms.ts';
import { clutchIn, codes, days, journal, until } from './facts.ts';
import { at, clutches, hatched, laid } from './waxbill-log.ts';

const { chicks } = until;
/** The age that each egg and each chick of the clutch was given, and what was found doubtful. */
const ages = (log: string) => {
  const known = at(log);
  const { eggs, chicks: young } = clutchIn(known, 'LW-1/1');
  const told = (all: readonly { aged: { days: number } | null }[]) =>
    all.map(({ aged }) => aged?.days ?? '-').join(' ');
  return { eggs: told(eggs), chicks: told(young), codes: codes(known) };
};

it('of none is that of chicks which hatched on that day', () => {
  const log = 'date: 2026-03-01, laid: 4, sitting\ndate: 2026-03-15, hatched: 2, aged: {0: all}';
  expect([hatched(log), hatched(log, 'LW-1/1/c2'), ...codes(at(log))]).toEqual(['03-15', '03-15']);
});

describe('an age told of all, where one egg is left beside the chicks', () => {
  it('is theirs where each can have hatched on that day, and the egg’s where not', () => {
    const all = (days: number) => ages(`${chicks}\ndate: 2026-03-24, aged: {${days}: all}`);
    expect(all(6)).toEqual({ eggs: '- - - -', chicks: '6 6 6', codes: [] });
    expect(all(5)).toEqual({ eggs: '- - - 5', chicks: '- - -', codes: [] });
    expect(all(12)).toEqual({ eggs: '- - - 12', chicks: '- - -', codes: [] });
  });

  it('is theirs from the first day on which they can have hatched', () => {
    const seen = `${until.eggs}\ndate: 2026-03-17, checked: {eggs: 4}\ndate: 2026-03-20, checked: {eggs: 1, chicks: 3}`;
    expect(ages(`${seen}\ndate: 2026-03-24, aged: {6: all}`)).toMatchObject({
      eggs: '- - - -',
      chicks: '6 6 6',
    });
    expect(ages(`${seen}\ndate: 2026-03-24, aged: {7: all}`)).toMatchObject({
      eggs: '- - - 7',
      chicks: '- - -',
    });
  });

  it('is the egg’s where only some of the chicks can have hatched on that day', () => {
    const brood = `${until.eggs}\ndate: 2026-03-16, hatched: e1\ndate: 2026-03-18, hatched: [e2, e3]`;
    expect(ages(`${brood}\ndate: 2026-03-24, aged: {8: all}`)).toEqual({
      eggs: '- - - 8',
      chicks: '- - -',
      codes: [],
    });
  });

  it('is of the nest that the entry names: chicks of the other are not meant', () => {
    const two = `date: 2026-03-05, site: left, laid: 4, sitting\ndate: 2026-03-12, site: right, laid: 3, sitting
      date: 2026-03-18, site: left, hatched: 4`;
    const known = at(`${two}\ndate: 2026-03-24, site: right, aged: {6: all}`);
    expect(clutchIn(known, 'LW-1/2').eggs.map((egg) => egg.aged?.days)).toEqual([6, 6, 6]);
    expect(clutchIn(known, 'LW-1/1').chicks.map((chick) => chick.aged)).toEqual([null, null, null, null]);
  });
});

it('a chick may be called by its egg beside one that is called by itself', () => {
  expect(ages(`${chicks}\ndate: 2026-03-24, aged: {6: [c1, e2]}`)).toEqual({
    eggs: '- - - -',
    chicks: '6 6 -',
    codes: [],
  });
});

it('the age of a chick changes nothing of when its egg was seen laid', () => {
  const before = laid(chicks);
  expect(laid(`${chicks}\ndate: 2026-03-24, aged: {6: c1}`)).toBe(before);
});

it('a chick of which only the age is told was in the nest, and came of eggs that nobody saw', () => {
  const log = 'date: 2026-03-24, aged: {6: c1}';
  expect([clutches(log), hatched(log)]).toEqual([['1: 1+ eggs, 1+ chicks'], '03-18']);
});

it('nor does it of an egg that was seen, though nobody counted how many there were', () => {
  const seen = 'date: 2026-03-05, laid: 3+\ndate: 2026-03-18, hatched: 2';
  expect(laid(`${seen}\ndate: 2026-03-24, aged: {8: 1}`)).toBe(laid(seen));
});

describe('the age of one chick of a brood of which nobody saw an egg', () => {
  // Lavender waxbills lay five at the most, one a day, and sit 11 days at the least.
  const sister = (log: string, name = 'LW-1/1') => days(clutchIn(at(log), name).chicks[0]?.hatched as Span);

  it('tells of the others that they hatched within the days of one laying', () => {
    const brood = 'date: 2026-03-24, checked: {chicks: 2}\ndate: 2026-03-28, aged: {10: c2}';
    expect(sister(brood)).toBe('03-14…03-22');
  });

  it('tells nothing of one that was seen too long before to be of that laying', () => {
    const seen = (on: string) =>
      `date: ${on}, weighed: {c1: 5.1}\ndate: 2026-03-19, checked: {chicks: 4}\ndate: 2026-03-20, aged: {1: c2}`;
    expect(sister(seen('2026-03-14'))).toBe('02-21…03-14');
    expect(sister(seen('2026-03-15'))).toBe('03-15');
  });

  it('makes none of the eggs beside it younger than it was seen to be', () => {
    const sat = 'date: 2026-03-05, sitting\ndate: 2026-03-20, hatched: e2';
    expect(laid(`${sat}\ndate: 2026-03-24, aged: {4: c1}`)).toBe(laid(sat));
  });

  it('tells nothing of eggs beside young that are about to fly: they may be of the next laying', () => {
    const found = (age: number) =>
      laid(
        `date: 2026-04-10, checked: {eggs: 2, chicks: 2}\ndate: 2026-04-10, aged: {${age}: [c1, c2]}`,
        'LW-1/1/e4',
      );
    // Waxbills leave the nest at 17 days at the least.
    expect(found(16)).toBe('03-19');
    expect(found(17)).toMatch(/…04-10$/);
    // Hens of budgerigars, which fledge at 28 days and more, lay again five days before that.
    const nest = (age: number) => {
      const log = `date: 2026-04-10, checked: {eggs: 2, chicks: 2}\ndate: 2026-04-10, aged: {${age}: [c1, c2]}`;
      const known = room({ P: journal('BU-1', 'budgerigar', log) }, '2026-04-11');
      return days(clutchIn(known, 'BU-1/1').eggs[3]?.laid as Span);
    };
    expect([nest(22), nest(23)]).toEqual(['03-15', '03-21…04-10']);
  });
});

it('eggs in the nest and in the incubator are taken by their numbers where a count says how many', () => {
  const log =
    'date: 2026-03-05, laid: 3\ndate: 2026-03-06, set: {incubator: e1}\ndate: 2026-03-11, aged: {5: 2}';
  expect(ages(log).eggs).toBe('5 5 -');
});
