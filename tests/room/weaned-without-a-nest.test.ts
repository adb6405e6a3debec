import { describe, expect, it } from 'vitest';
import { room } from '../rooms.ts';
import { clutchIn, codes, days, journal, waxbills } from './facts.ts';

// Nobody writes `fledged` of chicks that run with the hen, nor of those in a box on the table: what is told of them next
// is that they feed themselves.

describe('chicks that walk off as they hatch', () => {
  const quail = (...then: string[]) =>
    room(
      {
        P: journal(
          'KQ-1',
          'king quail',
          ['2026-05-10, laid: 1', '2026-05-16, laid: 6, sitting: hen', '2026-06-02, hatched: 5', ...then]
            .map((entry) => `date: ${entry}`)
            .join('\n'),
        ),
      },
      '2026-08-01',
    );

  it('feed themselves without a day on which they left the nest: they left it as they hatched', () => {
    const known = quail('2026-07-01, independent: all');
    expect(codes(known)).toEqual([]);
    const { chicks } = clutchIn(known, 'KQ-1/1');
    expect(chicks.every(({ independent }) => independent !== null)).toBe(true);
    expect(chicks.map(({ fledged }) => fledged && days(fledged.span))[0]).toBe('05-31…06-03');
  });

  it('are not meant while they are too young for it', () => {
    expect(codes(quail('2026-06-10, independent: all'))).toEqual(['nobody-possible']);
  });
});

describe('chicks that are fed by hand', () => {
  const hand = (entry: string) =>
    room(
      {
        P: waxbills(
          `date: 2026-03-05, laid: 4, sitting\ndate: 2026-03-18, hatched: 4, fostered: {hand: [c1, c2]}\n${entry}`,
        ),
      },
      '2026-06-01',
    );
  const weaned = (entry: string) =>
    clutchIn(hand(entry), 'LW-1/1').chicks.map(({ independent }) => independent !== null);

  it('feed themselves without a nest that they left', () => {
    const one = 'date: 2026-04-20, independent: c1';
    expect(codes(hand(one))).toEqual([]);
    expect(weaned(one)).toEqual([true, false, false, false]);
  });

  it('can feed themselves from the day on which they could have flown', () => {
    // At 17 days at the earliest (species profile); hatched by the 18th of March.
    const on = (date: string) => codes(hand(`date: ${date}, independent: c1`));
    expect([on('2026-04-03'), on('2026-04-04')]).toEqual([['impossible'], []]);
  });

  it('count as out of the nest from a day that nobody knows', () => {
    const [first] = clutchIn(hand('date: 2026-04-20, independent: c1'), 'LW-1/1').chicks;
    expect(first?.fledged?.span.to).toBe(first?.independent?.day);
    expect(first?.fledged?.span.from).toBeLessThan(first?.independent?.day ?? 0);
  });

  it('are fed on while those in the nest may be meant, of which nobody wrote that they left it: it is asked about', () => {
    const two = 'date: 2026-04-20, independent: 2';
    expect(weaned(two)).toEqual([false, false, true, true]);
    expect(codes(hand(two))).toEqual(['guessed']);
    expect(weaned('date: 2026-04-20, independent: all')).toEqual([true, true, true, true]);
  });
});

// Lavender waxbills leave the nest at 17 to 21 days and feed themselves at 30 to 40 (species profile).
describe('young of which nobody wrote that they left the nest', () => {
  const brood = (entry: string) =>
    room(
      { P: waxbills(`date: 2026-03-05, laid: 3, sitting\ndate: 2026-03-18, hatched: 3\n${entry}`) },
      '2026-12-01',
    );
  const weaned = (entry: string) =>
    clutchIn(brood(entry), 'LW-1/1').chicks.map(({ independent }) => independent !== null);

  it('feed themselves once they can be old enough, months later too: by then they are out', () => {
    for (const entry of [
      '04-17, independent: all',
      '04-17, independent: 3',
      '04-17, independent: [c1, c2, c3]',
      '11-20, clutch: 1, independent: all',
    ]) {
      expect(codes(brood(`date: 2026-${entry}`)), entry).toEqual([]);
      expect(weaned(`date: 2026-${entry}`), entry).toEqual([true, true, true]);
    }
    const [chick] = clutchIn(brood('date: 2026-11-20, independent: all'), 'LW-1/1').chicks;
    expect(chick?.fledged && days(chick.fledged.span)).toBe('03-23…04-08');
  });

  it('do not feed themselves before', () => {
    expect(codes(brood('date: 2026-04-16, independent: all'))).toEqual(['nobody-possible']);
  });

  it('are not who is meant while others are known to be out', () => {
    for (const who of ['2', 'all'])
      expect(
        weaned(`date: 2026-04-06, fledged: [c2, c3]\ndate: 2026-04-20, independent: ${who}`),
        who,
      ).toEqual([false, true, true]);
    expect(codes(brood('date: 2026-04-06, fledged: [c2, c3]\ndate: 2026-04-20, independent: all'))).toEqual([
      'guessed',
    ]);
  });

  describe('beside the next brood', () => {
    const next = (entry: string) =>
      brood(
        `date: 2026-04-11, clutch: 2, laid: 4, sitting: hen\ndate: 2026-04-23, checked\ndate: 2026-04-24, hatched: 3\ndate: 2026-05-12, clutch: 2, fledged: 3\n${entry}`,
      );
    const both = (entry: string) =>
      ['LW-1/1', 'LW-1/2'].map((id) =>
        clutchIn(next(entry), id).chicks.every(({ independent }) => independent !== null),
      );

    it('are meant while that is too young to feed itself', () => {
      for (const who of ['3', 'all']) {
        const entry = `date: 2026-05-13, independent: ${who}`;
        expect(both(entry), who).toEqual([true, false]);
        expect(codes(next(entry)), who).toEqual(['which-clutch']);
      }
    });

    it('are not meant of a year ago', () => {
      const log = 'date: 2025-03-05, laid: 3, sitting\ndate: 2025-03-18, hatched: 3\n';
      const later = `${log}date: 2026-03-05, laid: 4, sitting: hen\ndate: 2026-03-18, hatched: 3\ndate: 2026-04-05, fledged: 3\ndate: 2026-04-10, independent: 3`;
      const known = room({ P: waxbills(later) }, '2026-05-01');
      expect(clutchIn(known, 'LW-1/1').chicks.map(({ independent }) => independent)).toEqual([
        null,
        null,
        null,
      ]);
      expect(clutchIn(known, 'LW-1/2').chicks.every(({ independent }) => independent !== null)).toBe(true);
    });
  });
});

it('young that were only heard, or told at the least, are as many as feed themselves, while none was told to leave the nest', () => {
  const fed = (first: string, then: string) => {
    const log = `date: 2026-03-05, laid: 4, sitting\n${first}\ndate: 2026-04-28, ${then}`;
    const known = room({ P: waxbills(log) }, '2026-05-01');
    const { chicks } = clutchIn(known, 'LW-1/1');
    return [chicks.filter(({ independent }) => independent !== null).length, ...codes(known)];
  };
  expect(fed('date: 2026-03-18, heard', 'independent: 3')).toEqual([3]);
  expect(fed('date: 2026-03-18, hatched: 2+', 'independent: 3')).toEqual([3]);
  expect(fed('date: 2026-03-18, heard', 'independent: 5')).toEqual([4, 'too-many']);
  expect(fed('date: 2026-03-18, hatched: 2', 'independent: 3')).toEqual([2, 'too-many']);
  // No more than a hen of the kind lays, where nobody counted her eggs.
  const unseen = room(
    { P: waxbills('date: 2026-03-18, heard\ndate: 2026-04-28, independent: 9') },
    '2026-05-01',
  );
  expect([clutchIn(unseen, 'LW-1/1').chicks.length, ...codes(unseen)]).toEqual([5, 'too-many']);
  const winter = `date: 2026-01-19, heard\ndate: 2026-03-05, sitting\ndate: 2026-03-20, heard\ndate: 2026-05-02, independent: 3`;
  const two = room({ P: waxbills(winter) }, '2026-05-03');
  const grown = ['LW-1/1', 'LW-1/2'].map(
    (name) => clutchIn(two, name).chicks.filter(({ independent }) => independent !== null).length,
  );
  expect([grown, codes(two)]).toEqual([[0, 3], []]);
  const flown = 'date: 2026-03-18, heard\ndate: 2026-04-06, fledged: 2';
  expect(fed(flown, 'independent: 3')).toEqual([2, 'too-many']);
});

it('young of a nest that nobody ever looked into feed themselves on the day of which it is told', () => {
  const log = 'date: 2026-03-18, heard\ndate: 2026-04-06, fledged: 2\ndate: 2026-04-25, independent: 2';
  const { chicks } = clutchIn(room({ P: waxbills(log) }, '2026-06-01'), 'LW-1/1');
  expect(chicks.map(({ independent }) => independent && days(independent.span))).toEqual(['04-25', '04-25']);
});

it('a chick reared in the hand left its box a fledging age after it hatched at the earliest', () => {
  const log =
    'date: 2026-03-05, laid: 1\ndate: 2026-03-06, set: {incubator: all}\ndate: 2026-03-18, hatched: 1\ndate: 2026-05-01, independent: 1';
  const [chick] = clutchIn(room({ P: waxbills(log) }, '2026-06-01'), 'LW-1/1').chicks;
  // It hatched on 15 March at the earliest, and lavender waxbills leave the nest at 17 days at the earliest.
  expect(chick?.fledged && days(chick.fledged.span)).toBe('04-01…05-01');
});
