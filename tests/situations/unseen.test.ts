import { describe, expect, it } from 'vitest';
import { room } from '../rooms.ts';
import { birdIn, clutchIn, codes, days, due, eggIn, fates, spell, warned, waxbills } from './morning.ts';

describe('begging is the first that is written of a nest', () => {
  const files = { a: waxbills('date: 2026-05-14, heard: begging') };
  const hatched = (log: string) => {
    const span = birdIn(room({ a: waxbills(log) }, '2026-05-14'), 'LW-1/1/c1').hatched;
    return span === null ? null : days(span);
  };

  // Lavender waxbills leave the nest at 17 to 21 days, and are brooded for 7 to 9.
  it('the chicks may be just out of the egg or about to fly: warmth and watching begin at once', () => {
    expect(hatched('date: 2026-05-14, heard: begging')).toBe('04-23…05-14');
    expect(due(files, '2026-05-14')).toEqual(expect.arrayContaining(['LW-1 warm-nights', 'LW-1 fledge']));
  });

  it('after a look into an empty nest they are no older than that', () => {
    expect(hatched('date: 2026-05-10, checked\ndate: 2026-05-14, heard: begging')).toBe('05-11…05-14');
  });
});

describe('chicks are found at the first look into a nest', () => {
  const files = { a: waxbills('date: 2026-05-14, checked: {eggs: 1, chicks: 3}') };
  const hatched = (log: string) => {
    const span = birdIn(room({ a: waxbills(log) }, '2026-05-14'), 'LW-1/1/c1').hatched;
    return span === null ? null : days(span);
  };

  // Lavender waxbills leave the nest at 17 to 21 days; rings go on at 7 to 8.
  it('they may be about to fly: no look into the nest is asked for, and fledging is watched for', () => {
    expect(hatched('date: 2026-05-14, checked: {chicks: 3}')).toBe('04-23…05-14');
    expect(due(files, '2026-05-14')).toEqual(expect.arrayContaining(['LW-1 warm-nights', 'LW-1 fledge']));
    expect(spell(files, 'ring', 'LW-1', '2026-05-14', '2026-06-10')).toEqual([]);
  });

  it('once their age is told, all days are theirs: the egg beside them is left over', () => {
    const told = { a: `${files.a}\n  - {date: 2026-05-15, aged: {5: all}}` };
    expect(days(birdIn(room(told, '2026-05-15'), 'LW-1/1/c3').hatched as never)).toBe('05-10');
    expect(spell(told, 'ring', 'LW-1', '2026-05-14', '2026-06-10')).toEqual(['05-16 … 05-18']);
  });

  it('with the age of one told, the others hatched within the days that a clutch is laid in, before it or after it', () => {
    // Lavender waxbills lay four or five eggs, one a day: four days apart at most.
    const one = room({ a: `${files.a}\n  - {date: 2026-05-15, aged: {8: c1}}` }, '2026-05-15');
    const spans = ['c1', 'c2', 'c3'].map((ref) => days(birdIn(one, `LW-1/1/${ref}`).hatched as never));
    expect(spans).toEqual(['05-07', '05-03…05-11', '05-03…05-11']);
    // Who is known to be older or younger stays so.
    const two = { a: `${files.a}\n  - {date: 2026-05-15, aged: {8: c1, 2: c2}}` };
    expect(days(birdIn(room(two, '2026-05-15'), 'LW-1/1/c2').hatched as never)).toBe('05-13');
  });

  it('where a hen lays every other day, they may be as much further apart', () => {
    // Diamond doves: two eggs, two days apart (common practice).
    const doves = waxbills('date: 2026-05-14, checked: {chicks: 2}\ndate: 2026-05-15, aged: {6: c1}').replace(
      'lavender waxbill',
      'diamond dove',
    );
    const known = room({ a: doves }, '2026-05-15');
    expect(days(birdIn(known, 'LW-1/1/c2').hatched as never)).toBe('05-07…05-11');
  });

  it('with their age told, the egg beside them hatches soon or not at all: none was laid a fortnight after theirs', () => {
    const last = (aged: string) => {
      const known = room({ a: `${files.a}\n  - {date: 2026-05-14, aged: ${aged}}` }, '2026-05-14');
      return days(eggIn(known, 'LW-1/1/e4').laid);
    };
    // Sat on for eleven days at least, less one; laid in four days.
    expect(last('{5: all}')).toBe('05-01…05-03');
    // Beside young about to fly it may be the first of the next laying.
    expect(last('{18: all}')).toMatch(/…05-14$/);
    const told = { a: `${files.a}\n  - {date: 2026-05-14, aged: {5: all}}` };
    expect(spell(told, 'hatch', 'LW-1', '2026-05-14', '2026-06-10')).toEqual(['05-14 … 05-16']);
  });

  it('after a look they are no older than that, and after one of long ago as old as they can be', () => {
    expect(hatched('date: 2026-05-10, checked\ndate: 2026-05-14, checked: {chicks: 3}')).toBe('05-11…05-14');
    expect(hatched('date: 2026-01-10, checked\ndate: 2026-05-14, checked: {chicks: 3}')).toBe('04-23…05-14');
    expect(hatched('date: 2026-01-10, checked\ndate: 2026-05-14, heard')).toBe('04-23…05-14');
  });
});

describe('a nest that is never looked into', () => {
  const files = {
    a: waxbills(
      `
      date: 2026-02-20, paired
      date: 2026-03-04, sitting: hen
      date: 2026-03-16, heard: begging
      date: 2026-04-04, fledged: 3
    `,
      'nest-looks: never',
    ),
  };

  it('asks for no look into it: no next egg, no candling, no ring', () => {
    for (const task of ['next-egg', 'candle', 'ring', 'unhatched'])
      expect(spell(files, task, 'LW-1', '2026-03-04', '2026-05-01'), task).toEqual([]);
  });

  it('tells of chicks once they are heard, of unknown number until they are out', () => {
    const on = (day: string) => clutchIn(room(files, day), 'LW-1/1').chicks.map(({ ref }) => ref);
    expect(on('2026-03-15')).toEqual([]);
    expect(on('2026-03-16')).toEqual(['c1']);
    expect(on('2026-04-04')).toEqual(['c1', 'c2', 'c3']);
    expect(codes(room(files, '2026-04-04'))).toEqual([]);
  });

  it('asks on the two mornings after the first begging whether they are fed, and for live food until it is there', () => {
    expect(due(files, '2026-03-17')).toContain('LW-1 first-feed');
    expect(warned(files, 'live-food-missing', '2026-03-16').map(({ level }) => level)).toEqual(['act']);
    const fed = { a: `${files.a}\n  - {date: 2026-03-16, food: [live food]}` };
    expect(warned(fed, 'live-food-missing', '2026-03-16')).toEqual([]);
  });

  // 13 days of sitting at most, 21 in the nest: unseen chicks would be out by early April (the profile).
  it('wants live food as long as chicks may be in there that nobody heard', () => {
    const silent = { a: waxbills('date: 2026-03-04, sitting: hen', 'nest-looks: never') };
    expect(spell(silent, 'live-food', 'LW-1', '2026-03-04', '2026-06-01')).toEqual(['03-04 … 04-06']);
    const found = { a: `${silent.a}\n  - {date: 2026-03-22, checked: {eggs: 1}}` };
    expect(spell(found, 'live-food', 'LW-1', '2026-03-23', '2026-06-01')).toEqual([]);
  });

  // Lavender waxbills: the parents may drive from five days after the first fledging.
  it('is watched again once the young are out: first fledged on 4 April, five days on is the 9th', () => {
    expect(due(files, '2026-04-08')).not.toContain('LW-1 watch-restart');
    expect(due(files, '2026-04-09')).toContain('LW-1 watch-restart');
  });
});

describe('a brood found late', () => {
  const files = { a: waxbills('date: 2026-03-20, hatched: 3, aged: {6: all}') };

  it('counts its days from the age that its chicks look', () => {
    const known = room(files, '2026-03-20');
    expect(days(birdIn(known, 'LW-1/1/c1').hatched as never)).toBe('03-14');
    expect(codes(known)).toEqual([]);
    // Hatched on the 14th, ring age 7–8 days: looked for from the 20th to the 22nd, then it is too late.
    expect(spell(files, 'ring', 'LW-1', '2026-03-14', '2026-04-10')).toEqual(['03-20 … 03-22']);
  });

  it('with eggs beside the chicks has them both', () => {
    const both = {
      a: waxbills('date: 2026-03-20, hatched: 2\ndate: 2026-03-20, checked: {eggs: 1, chicks: 2}'),
    };
    const known = room(both, '2026-03-20');
    expect(fates(clutchIn(known, 'LW-1/1'))).toEqual(['e1 hatched', 'e2 hatched', 'e3 open']);
    expect(codes(known)).toEqual([]);
  });
});

describe('a pair that sits on and off', () => {
  const laid = `
    date: 2026-03-01, laid: 1
    date: 2026-03-04, laid: 3, sitting
    date: 2026-03-06, time: 08:00, sitting: off
  `;

  // Keepers' pages: lavender waxbills leave the eggs for a day and sit again.
  it('found off the eggs once is not asked about', () => {
    expect(warned({ a: waxbills(laid) }, 'deserted', '2026-03-06')).toEqual([]);
  });

  it('found off twice some hours apart is, until somebody sits again', () => {
    const twice = `${laid}\ndate: 2026-03-06, time: 18:00, sitting: off`;
    expect(warned({ a: waxbills(twice) }, 'deserted', '2026-03-06')).toHaveLength(1);
    const again = `${twice}\ndate: 2026-03-07, sitting: cock`;
    expect(warned({ a: waxbills(again) }, 'deserted', '2026-03-07')).toEqual([]);
  });

  it('goes on counting from the first day it sat: candled on day five and six all the same', () => {
    const again = `${laid}\ndate: 2026-03-07, sitting`;
    expect(spell({ a: waxbills(again) }, 'candle', 'LW-1', '2026-03-04', '2026-03-20')).toEqual([
      '03-09 … 03-10',
    ]);
  });
});
