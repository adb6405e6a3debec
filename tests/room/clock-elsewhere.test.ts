import { describe, expect, it } from 'vitest';
import { hatchedOn, sittingStart } from '../../src/room/clock.ts';
import { day, room } from '../rooms.ts';
import { clock, daily, sitting } from './clocks.ts';
import { birdIn, clutchIn, days, journal, waxbills } from './facts.ts';

// Eggs that went from nest to nest or were warmed by nobody, and nests of which little is known.

const other = (log = '') => journal('BF-1', 'bengalese finch', log);

describe('an egg’s clock', () => {
  it('has not begun while nobody sits on it, and begins where it is set, be it under its own hen', () => {
    const first = (log: string) => clock({ P: waxbills(log) }, 'LW-1/1/e1', '2026-03-02');
    expect(first(daily(1, 2))).toBeNull();
    expect(first('date: 2026-03-01, laid: 1, pulled: 1\ndate: 2026-03-02, set: e1')).toBe('03-02 running');
  });

  it('is set by the lamp though the egg went into the incubator on that day', () => {
    const log = 'date: 2026-03-20, sitting\ndate: 2026-03-21, aged: {7: e1}, set: {incubator: e1}';
    expect(clock({ P: waxbills(log) }, 'LW-1/1/e1', '2026-03-22')).toBe('03-14 running');
  });

  it('ran in a nest where nobody was seen to sit, if the lamp told its age there, not if it grew only afterwards', () => {
    const unseen = (before: string, after: string) => {
      const log = `${daily(1, 5)}\n${before}\ndate: 2026-03-10, set: {incubator: all}\n${after}`;
      return clock({ P: waxbills(log) }, 'LW-1/1/e5', '2026-03-15');
    };
    expect(unseen('date: 2026-03-08, aged: {3: e5}', '')).toBe('03-05 running');
    const grown = 'candled: {fertile: all}';
    expect(unseen(`date: 2026-03-10, ${grown}`, '')).toBe('03-05 running');
    expect(unseen('', `date: 2026-03-14, ${grown}`)).toBe('03-05…03-10 running');
  });

  it('ran for all the days that it was in the incubator, and under foster parents: nobody gives eggs to such as do not sit', () => {
    const moved = (first: string, then: string, foster = '') =>
      clock(
        { P: waxbills(`date: 2026-03-01, laid: 1\n${first}\n${then}`), Q: other(foster) },
        'LW-1/1/e1',
        '2026-03-12',
      );
    const incubator = 'date: 2026-03-10, set: {incubator: e1}';
    const set = 'date: 2026-03-02, set: {incubator: e1}';
    expect(moved(set, 'date: 2026-03-10, fostered: {BF-1: e1}')).toBe('03-01…03-02 running');
    const given = 'date: 2026-03-02, fostered: {BF-1: e1}';
    expect(moved(given, incubator)).toBe('03-01…03-02 running');
    // Of the foster parents nobody wrote when they began: it follows from their own eggs.
    expect(moved(given, incubator, daily(1, 6))).toBe('03-02…03-05 running');
  });
});

describe('the day of hatching', () => {
  const hatched = (log: string, name = 'LW-1/1/c1') => {
    const span = hatchedOn(birdIn(room({ P: waxbills(log) }, '2026-04-20'), name));
    return span && days(span);
  };
  // Found on the first of March, they may have been laid since the middle of February.
  const found = 'date: 2026-02-10, checked\ndate: 2026-03-01, laid: 5, sitting';

  it('is near that of eggs that went the same way, and says nothing of those that did not', () => {
    const set = (on: string, who: string) => `date: 2026-03-${on}, set: {incubator: ${who}}`;
    const late = 'date: 2026-03-19, hatched: e5';
    const first = 'date: 2026-03-13, hatched: e1';
    // Warmed on the same day, they hatch within six days of each other.
    expect(hatched(`${found}\n${set('02', 'all')}\n${first}\n${late}`)).toBe('03-08…03-13');
    expect(hatched(`${found}\n${set('02', 'e1')}\n${set('07', 'e5')}\n${first}\n${late}`)).toBe(
      '03-02…03-13',
    );
    // The others were left in the nest.
    expect(hatched(`${found}\n${set('02', 'e1')}\n${first}\n${late}`)).toBe('03-02…03-13');
  });

  it('is twice as far from that of the others where eggs come every other day', () => {
    const files = {
      'species/slow-layer.yaml':
        'species: slow layer\nclutch: 4-5\nlaying-interval: 2\nincubation: 11-13\nsitting-from: 1-2\n',
      P: journal(
        'X-1',
        'slow layer',
        `${found}\ndate: 2026-03-14, hatched: e1\ndate: 2026-03-16, hatched: e2`,
      ),
    };
    // Five eggs in eight days, and two by which sittings differ.
    const span = hatchedOn(birdIn(room(files, '2026-03-17'), 'X-1/1/c1'));
    expect(span && days(span)).toBe('03-05…03-14');
  });

  it('is that of the look where the room’s own profile does not say how long the species sits', () => {
    const files = {
      'species/ridge-finch.yaml': 'species: ridge finch\nclutch: 4\n',
      P: journal(
        'X-1',
        'ridge finch',
        'date: 2026-03-01, laid: 1\ndate: 2026-03-08, checked\ndate: 2026-03-16, hatched: e1',
      ),
    };
    const span = hatchedOn(birdIn(room(files, '2026-03-17'), 'X-1/1/c1'));
    expect(span && days(span)).toBe('03-09…03-16');
  });
});

describe('sitting', () => {
  it('on eggs of which only a slip was written began since that day; unseen it has not', () => {
    const slip = 'date: 2026-03-05, clutch: 1, laid: c1';
    expect(sitting(slip, '2026-03-20')).toBeNull();
    expect(sitting(`${slip}\ndate: 2026-03-07, clutch: 1, sitting`, '2026-03-20')).toBe('03-05…03-07 seen');
  });

  it('on eggs that come every other day, while nobody looks, can have begun so much later', () => {
    const known = (on: string) => {
      const files = {
        'species/late-sitter.yaml':
          'species: late sitter\nsitting-from: last\nlaying-interval: 2\nclutch: 3-5\n',
        P: journal('P-1', 'late sitter', 'date: 2026-03-01, laid: 1'),
      };
      const start = sittingStart(clutchIn(room(files, on), 'P-1/1'), day(on));
      return start && days(start.span);
    };
    // Four more of them in eight days.
    expect(known('2026-03-20')).toBe('03-01…03-09');
  });

  it('of a species without a profile is inferred from the last egg', () => {
    expect(sitting(daily(1, 4), '2026-03-07', 'ridge finch')).toBe('03-04 from e4');
  });
});
