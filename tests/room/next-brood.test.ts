import { describe, expect, it } from 'vitest';
import { understanding } from '../../src/room/fold.ts';
import { fullRef } from '../../src/room/model.ts';
import { day, record, room } from '../rooms.ts';
import { birdIn, clutchIn, codes, journal, pairIn, waxbills } from './facts.ts';
import { at, clutches } from './waxbill-log.ts';

// Lavender waxbills leave the nest at 17 to 21 days, and sit 11 to 13 days (species profile).
describe('young that leave a nest which is left alone', () => {
  it('are the next brood once others flew before these can have hatched', () => {
    const flown = (on: string) => clutches(`date: 2026-04-06, fledged: 3\ndate: ${on}, fledged: 2`);
    expect(flown('2026-06-20')).toEqual(['1: 3+ eggs, 3+ chicks', '2: 2+ eggs, 2+ chicks']);
    expect(flown('2026-04-23')).toHaveLength(2);
    expect(flown('2026-04-22')).toEqual(['1: 5+ eggs, 5+ chicks']);
  });

  it('are none of a clutch that was counted beside it, but of the one that was only heard', () => {
    const heard = 'date: 2026-04-03, heard\ndate: 2026-04-21, laid: 2\ndate: 2026-04-24, fledged: 4';
    expect(clutches(heard)).toEqual(['1: 4+ eggs, 4+ chicks', '2: 2 eggs, 0 chicks']);
    expect(codes(at(heard))).toEqual([]);
  });

  it('are no second brood where they are told once more, nor where one more flew than had hatched: it is asked about', () => {
    const brood =
      'date: 2026-03-05, laid: 4, sitting\ndate: 2026-03-18, hatched: 3\ndate: 2026-04-06, fledged: 3';
    for (const again of ['date: 2026-04-07, fledged: 3', 'date: 2026-04-22, fledged: 1']) {
      expect(clutches(`${brood}\n${again}`), again).toEqual(['1: 4 eggs, 3 chicks']);
      expect(codes(at(`${brood}\n${again}`)), again).toEqual(['too-many']);
    }
    expect(clutches(`${brood}\ndate: 2026-04-23, fledged: 2`)).toEqual([
      '1: 4 eggs, 3 chicks',
      '2: 2+ eggs, 2+ chicks',
    ]);
  });

  it('are of the brood that was heard there, and none of the last one, of which nobody wrote that it flew', () => {
    const second =
      'date: 2026-04-10, laid: 4, sitting\ndate: 2026-04-25, heard\ndate: 2026-05-14, fledged: 3';
    for (const first of ['heard', 'hatched: 3']) {
      const known = at(`date: 2026-03-01, laid: 4, sitting\ndate: 2026-03-15, ${first}\n${second}`);
      const flown = pairIn(known, 'LW-1').clutches.map(
        ({ chicks }) => chicks.filter(({ fledged }) => fledged !== null).length,
      );
      expect([flown, codes(known)], first).toEqual([[0, 3], []]);
    }
  });

  it('are those of the nest though they are late, where these are enough for the number', () => {
    const late = (count: number) =>
      clutches(
        `date: 2026-03-05, laid: 3, sitting\ndate: 2026-03-18, hatched: 3\ndate: 2026-05-01, fledged: ${count}`,
      );
    expect(late(3)).toEqual(['1: 3 eggs, 3 chicks']);
    expect(late(4)).toEqual(['1: 3 eggs, 3 chicks', '2: 4+ eggs, 4+ chicks']);
  });

  it('came of no eggs that were laid too late for them, nor of those in the other nest', () => {
    const late = 'date: 2026-04-01, laid: 1\ndate: 2026-04-18, fledged: 2';
    expect(clutches(late)).toEqual(['1: 1 eggs, 0 chicks', '2: 2+ eggs, 2+ chicks']);
    const two = 'date: 2026-03-09, site: left, laid: 4\ndate: 2026-04-11, site: right, fledged: 2';
    expect(clutches(two)).toEqual(['1: 4 eggs, 0 chicks', '2: 2+ eggs, 2+ chicks']);
    expect(clutches(two.replace('right', 'left'))).toEqual(['1: 4 eggs, 2+ chicks']);
  });

  it('one more than hatched, came of an egg of their own nest: a look into the other says nothing of it', () => {
    const box = 'date: 2026-03-05, site: box, laid: 4, sitting\ndate: 2026-03-18, site: box, hatched: 3';
    const bush = 'date: 2026-04-02, site: bush, laid: 2';
    const log = `${box}\n${bush}\ndate: 2026-04-07, fledged: 4`;
    expect(clutches(log)).toEqual(['1: 4 eggs, 4 chicks', '2: 2 eggs, 0 chicks']);
    expect(codes(at(log))).toEqual(['counted-as-hatched']);
    expect(codes(at(log.replaceAll('bush', 'box')))).toEqual(['too-many']);
  });

  it('are a brood of its own, though the pair’s eggs lie under others', () => {
    const log = 'date: 2026-03-09, laid: 2\ndate: 2026-03-23, set: {LW-1: all}, fledged: 4';
    const files = { P: journal('BF-1', 'bengalese finch', log), Q: waxbills('') };
    expect(pairIn(room(files, '2026-03-24'), 'BF-1').clutches.map(({ chicks }) => chicks.length)).toEqual([
      0, 4,
    ]);
  });

  it('are counted, or were named before: no number names one of whom nobody told', () => {
    expect(codes(at('date: 2026-03-12, laid: 4\ndate: 2026-04-21, fledged: c1'))).toEqual(['no-such-chick']);
  });
});

it('king quail that walk off a day after the others are of the same brood', () => {
  const log = 'date: 2026-03-17, hatched: 3\ndate: 2026-03-18, fledged: 3\ndate: 2026-03-19, fledged: 1';
  const [brood, ...more] = pairIn(
    room({ P: journal('KQ-1', 'king quail', log) }, '2026-03-20'),
    'KQ-1',
  ).clutches;
  expect([brood?.chicks.length, more.length]).toEqual([4, 0]);
});

it('young that leave a nest beside a winter’s nestling of which nobody wrote that it flew are the next brood', () => {
  const log =
    'date: 2026-02-03, sitting: hen\ndate: 2026-02-17, hatched: 5\ndate: 2026-03-10, fledged: 3\ndate: 2026-05-24, fledged: 3';
  expect(clutches(log)).toEqual(['1: 5+ eggs, 5+ chicks', '2: 3+ eggs, 3+ chicks']);
  expect(codes(at(log))).toEqual([]);
});

describe('chicks that hatch more than there were eggs', () => {
  // A brood that was written of only as it flew begins that late: it is none that hatches three weeks on.
  it.each([
    'date: 2026-05-05, fledged: 3',
    'date: 2026-05-01, checked: {chicks: 3}\ndate: 2026-05-05, fledged: 3',
    'date: 2026-05-05, fledged: 3\ndate: 2026-05-15, checked: {eggs: 4}',
  ])('are the next brood, after %s', (before) => {
    const log = `${before}\ndate: 2026-05-28, hatched: 3`;
    const [brood, next, ...more] = pairIn(at(log, '2026-05-29'), 'LW-1').clutches;
    expect([brood?.chicks.length, next?.chicks.length, more.length]).toEqual([3, 3, 0]);
    expect(codes(at(log, '2026-05-29')).filter((code) => code !== 'counted-as-laid')).toEqual([]);
  });

  it('are the next clutch, though an egg was left that nobody wrote the end of', () => {
    const before =
      'date: 2026-03-05, laid: 5, sitting\ndate: 2026-03-18, hatched: 3\ndate: 2026-04-06, fledged: 2';
    for (const again of ['', '\ndate: 2026-04-30, sitting']) {
      const log = `${before}${again}\ndate: 2026-05-12, hatched: 4`;
      expect(clutches(log), again).toEqual(['1: 5 eggs, 3 chicks', '2: 4+ eggs, 4+ chicks']);
      expect(codes(at(log)), again).toEqual([]);
    }
  });

  it('are none of a brood that was heard months ago: neither the one that begged, nor more of its kind', () => {
    const heard = 'date: 2026-03-24, heard\ndate: 2026-06-01, laid: 2, sitting';
    const known = (count: number) => {
      const log = `${heard}\ndate: 2026-06-16, hatched: ${count}`;
      const one = room({ P: journal('BF-1', 'bengalese finch', log) }, '2026-06-17');
      return [...pairIn(one, 'BF-1').clutches.map(({ chicks }) => chicks.length), ...codes(one)];
    };
    expect(known(2)).toEqual([1, 2]);
    expect(known(4)).toEqual([1, 2, 'too-many']);
  });

  it('are of the brood that was heard days ago, and the one that begged is the first of them', () => {
    const heard = 'date: 2026-03-24, heard\ndate: 2026-03-26, hatched: 3';
    expect(clutches(heard)).toEqual(['1: 3+ eggs, 3+ chicks']);
    const clock = { day: day('2026-03-26'), today: day('2026-03-26') };
    const told = [...understanding(record({ P: waxbills(heard) }, '2026-03-26'), clock, new Set())];
    expect(told.at(-1)?.about.flatMap(({ who }) => who.map(fullRef))).toEqual([
      'LW-1/1/e1',
      'LW-1/1/e2',
      'LW-1/1/e3',
    ]);
    // Named by its egg it hatched already, and how many there are stays open.
    const named = at('date: 2026-03-24, heard\ndate: 2026-03-26, hatched: e1');
    expect([birdIn(named, 'LW-1/1/c1').placeholder, codes(named)]).toEqual([true, ['hatched-twice']]);
  });

  it('beside a counted clutch that hatches whole are of the other nest, where young were heard', () => {
    const two =
      'date: 2026-03-12, site: left, heard\ndate: 2026-03-18, site: right, laid: 2, sitting\ndate: 2026-03-31, hatched: 4';
    const known = at(two, '2026-04-01', 'nest-looks: freely');
    expect(pairIn(known, 'LW-1').clutches.map(({ chicks }) => chicks.length)).toEqual([2, 2]);
    expect(codes(known)).toEqual([]);
  });

  it('are one of two broods that were heard in two nests, where one is counted', () => {
    const begging = ['left', 'right'].map((site) => `date: 2026-03-24, site: ${site}, heard`).join('\n');
    const known = at(`${begging}\ndate: 2026-03-26, hatched: 1`);
    const told = pairIn(known, 'LW-1').clutches.flatMap(({ chicks }) => chicks);
    expect(told.map(({ placeholder }) => placeholder)).toEqual([false, true]);
    expect(codes(known)).toEqual([]);
  });

  it('under foster parents, heard or at least so many: whoever leaves the nest came of those eggs, at once or in turn', () => {
    for (const first of ['heard', 'hatched: 2+', 'heard\ndate: 2026-03-27, checked'])
      for (const flew of [[3], [2, 1], [1, 1, 1]]) {
        const lines = flew.map((count, i) => `date: 2026-04-${10 + i}, fledged: ${count}`);
        const files = {
          P: waxbills('date: 2026-03-05, laid: 4\ndate: 2026-03-07, fostered: {BF-1: all}'),
          Q: journal(
            'BF-1',
            'bengalese finch',
            ['date: 2026-03-01, paired', `date: 2026-03-20, ${first}`, ...lines].join('\n'),
          ),
        };
        const known = room(files, '2026-04-13');
        const out = clutchIn(known, 'LW-1/1').chicks.filter(({ fledged }) => fledged !== null);
        expect([out.length, ...codes(known)], `${first}, ${flew}`).toEqual([3]);
      }
  });

  it('under foster parents with eggs of their own, at least so many: the others that leave the nest may be guests', () => {
    const files = {
      P: waxbills('date: 2026-03-05, laid: 4\ndate: 2026-03-07, fostered: {BF-1: all}'),
      Q: journal(
        'BF-1',
        'bengalese finch',
        'date: 2026-03-06, laid: 2\ndate: 2026-03-22, hatched: 2+\ndate: 2026-04-14, fledged: 5',
      ),
    };
    const known = room(files, '2026-04-15');
    const flown = ['BF-1/1', 'LW-1/1'].flatMap((name) => clutchIn(known, name).chicks);
    expect([flown.length, ...codes(known)]).toEqual([5, 'guessed']);
  });

  it('under foster parents that were only seen to sit, heard and then out of the nest one by one, are guests', () => {
    const flown = ['07', '08', '09'].map((day) => `date: 2026-03-${day}, fledged: 1`);
    const log = ['date: 2026-02-08, sitting', 'date: 2026-02-19, heard', ...flown].join('\n');
    const files = {
      P: journal(
        'LW-1',
        'violet-eared waxbill',
        'date: 2026-02-06, laid: 5, sitting\ndate: 2026-02-11, fostered: {BF-1: all}',
      ),
      Q: journal('BF-1', 'bengalese finch', log),
    };
    const known = room(files, '2026-03-10');
    const flew = ['BF-1/1', 'LW-1/1'].map((name) => clutchIn(known, name).chicks.length);
    expect([...flew, ...codes(known)]).toEqual([0, 3]);
  });

  it('under foster parents whose own eggs were taken out for them are guests, however they are told', () => {
    for (const told of [['date: 2026-03-18, heard'], []])
      for (const removed of ['all', '[e1, e2, e3]']) {
        const log = [
          'date: 2026-03-01, laid: 3, sitting',
          `date: 2026-03-04, lost: {removed: ${removed}}`,
          ...told,
          'date: 2026-04-08, fledged: 3',
          'date: 2026-04-09, fledged: 1',
        ];
        const files = {
          P: waxbills('date: 2026-03-03, laid: 4\ndate: 2026-03-04, fostered: {BF-1: all}'),
          Q: journal('BF-1', 'bengalese finch', log.join('\n')),
        };
        const known = room(files, '2026-04-10');
        expect([clutchIn(known, 'LW-1/1').chicks.length, ...codes(known)], removed).toEqual([4]);
      }
  });

  it('under foster parents who were given those of two pairs are of both', () => {
    const files = {
      P: waxbills('date: 2026-03-04, laid: 3\ndate: 2026-03-05, fostered: {BF-1: all}'),
      R: journal('SF-1', 'star finch', 'date: 2026-03-04, laid: 3\ndate: 2026-03-05, fostered: {BF-1: all}'),
      Q: journal('BF-1', 'bengalese finch', 'date: 2026-03-20, heard\ndate: 2026-04-08, fledged: 5'),
    };
    const known = room(files, '2026-04-10');
    const flown = ['LW-1/1', 'SF-1/1'].flatMap((name) => clutchIn(known, name).chicks);
    expect([flown.length, ...codes(known).filter((code) => code !== 'guessed')]).toEqual([5]);
  });

  it('under foster parents without eggs of their own are guests, and no clutch of theirs', () => {
    const files = {
      P: waxbills('date: 2026-03-05, laid: 4\ndate: 2026-03-07, fostered: {BF-1: all}'),
      Q: journal('BF-1', 'bengalese finch', 'date: 2026-03-01, paired\ndate: 2026-03-20, hatched: 2'),
    };
    const known = room(files, '2026-03-21');
    expect(pairIn(known, 'BF-1').clutches).toEqual([]);
    expect(clutchIn(known, 'LW-1/1').chicks).toHaveLength(2);
  });
});
