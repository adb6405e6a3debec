import { describe, expect, it } from 'vitest';
import { eggClock, hatchedOn, sittingStart } from '../../src/room/clock.ts';
import { day, type Files, room } from '../rooms.ts';
import { birdIn, clutchIn, days, eggIn, journal, waxbills } from './facts.ts';

/** When sitting began, as known on a day: `03-03…03-04 from e3–e4`, or null. */
function sitting(log: string, on: string, species = 'lavender waxbill'): string | null {
  const known = room({ P: journal('P-1', species, log) }, on);
  const start = sittingStart(clutchIn(known, 'P-1/1'), day(on));
  return start && `${days(start.span)} ${start.inferred ? `from ${start.eggs}` : 'seen'}`;
}

/** Since when an egg counts as sat on: `03-03…03-04 running`, or null. */
function clock(files: Files, egg: string, on: string): string | null {
  const known = eggClock(eggIn(room(files, on), egg), day(on));
  return known && `${days(known.start)} ${known.running ? 'running' : 'stopped'}`;
}

const daily = (from: number, to: number) =>
  Array.from({ length: to - from + 1 }, (_, i) => `date: 2026-03-0${from + i}, laid: 1`).join('\n');

describe('sitting', () => {
  it('seen began no earlier than the first egg that the species sits on, and by the day it was seen', () => {
    // Eggs 1–5 of March, sat on from the third or fourth: e3 was laid on the 3rd.
    expect(sitting(`${daily(1, 5)}\ndate: 2026-03-06, sitting: hen`, '2026-03-06')).toBe('03-03…03-06 seen');
  });

  it('began after the last look that found the eggs cold', () => {
    const log = `${daily(1, 5)}\ndate: 2026-03-04, sitting: off\ndate: 2026-03-06, sitting`;
    expect(sitting(log, '2026-03-06')).toBe('03-05…03-06 seen');
  });

  it('is dated by its first sight; a cold look later does not move it', () => {
    const log = `${daily(1, 4)}\ndate: 2026-03-04, sitting\ndate: 2026-03-06, sitting: off\ndate: 2026-03-07, sitting`;
    expect(sitting(log, '2026-03-08')).toBe('03-03…03-04 seen');
  });

  it('not seen is inferred from the third to fourth egg of a lavender waxbill', () => {
    expect(sitting(daily(1, 2), '2026-03-02')).toBeNull();
    expect(sitting(daily(1, 5), '2026-03-05')).toBe('03-03…03-04 from e3–e4');
  });

  it('of fewer eggs than that is inferred from the last, once another would be late', () => {
    // Last egg on the 2nd, one a day: the next was due on the 3rd, a day's grace is the 4th.
    expect(sitting(daily(1, 2), '2026-03-04')).toBeNull();
    expect(sitting(daily(1, 2), '2026-03-05')).toBe('03-02 from e2');
  });

  it('of a species that sits from the last egg is inferred from it alone', () => {
    const files = (on: string) =>
      room(
        {
          'species/late-sitter.yaml': 'species: late sitter\nsitting-from: last\nlaying-interval: 1\n',
          P: journal('P-1', 'late sitter', daily(1, 4)),
        },
        on,
      );
    const on = (text: string) => sittingStart(clutchIn(files(text), 'P-1/1'), day(text));
    expect(on('2026-03-06')).toBeNull();
    expect(on('2026-03-07')).toMatchObject({ span: { from: day('2026-03-04'), to: day('2026-03-04') } });
  });

  it('of budgerigars begins with the first or second egg, laid every other day', () => {
    const log = 'date: 2026-03-01, laid: 1\ndate: 2026-03-03, laid: 1\ndate: 2026-03-05, laid: 1';
    expect(sitting(log, '2026-03-05', 'budgerigar')).toBe('03-01…03-03 from e1–e2');
  });
});

describe('an egg’s clock', () => {
  const laid = `${daily(1, 5)}\ndate: 2026-03-04, sitting`;

  it('starts with the sitting, and for an egg laid later with the egg', () => {
    const files = { P: waxbills(laid) };
    expect(clock(files, 'LW-1/1/e1', '2026-03-08')).toBe('03-03…03-04 running');
    expect(clock(files, 'LW-1/1/e5', '2026-03-08')).toBe('03-05 running');
  });

  it('waits in store, and starts on the day the egg is set', () => {
    const files = {
      P: waxbills('date: 2026-03-01, laid: 1, pulled: e1\ndate: 2026-03-05, laid: 4, set: e1, sitting'),
    };
    expect(clock(files, 'LW-1/1/e1', '2026-03-04')).toBeNull();
    expect(clock(files, 'LW-1/1/e1', '2026-03-06')).toBe('03-05 running');
  });

  it('stops while the egg is pulled, and goes on from where it was', () => {
    // Sat on from the 3rd or 4th to the 7th: 3 or 4 days. Set on the 10th: as if begun on the 6th or 7th.
    const files = { P: waxbills(`${laid}\ndate: 2026-03-07, pulled: e1\ndate: 2026-03-10, set: e1`) };
    expect(clock(files, 'LW-1/1/e1', '2026-03-08')).toBe('03-03…03-04 stopped');
    expect(clock(files, 'LW-1/1/e1', '2026-03-12')).toBe('03-06…03-07 running');
    expect(clock(files, 'LW-1/1/e2', '2026-03-12')).toBe('03-03…03-04 running');
  });

  it('goes on without a break under another pair', () => {
    const files = {
      P: waxbills(`${laid}\ndate: 2026-03-08, fostered: {BF-1: e1}`),
      Q: journal('BF-1', 'bengalese finch', 'date: 2026-03-05, laid: 5, sitting'),
    };
    expect(clock(files, 'LW-1/1/e1', '2026-03-10')).toBe('03-03…03-04 running');
  });

  it('goes on without a break when the egg is fostered away and home again', () => {
    const files = {
      P: waxbills(`${laid}\ndate: 2026-03-07, fostered: {BF-1: e1}`),
      Q: journal(
        'BF-1',
        'bengalese finch',
        'date: 2026-03-05, laid: 5, sitting\ndate: 2026-03-10, fostered: {LW-1: LW-1/1/e1}',
      ),
    };
    expect(clock(files, 'LW-1/1/e1', '2026-03-12')).toBe('03-03…03-04 running');
  });

  it('of a stored egg starts when it is set under another pair, or in an incubator', () => {
    const set = (place: string) => ({
      P: waxbills(`date: 2026-03-01, laid: 1, pulled: e1\ndate: 2026-03-06, set: {${place}: e1}`),
      Q: journal('BF-1', 'bengalese finch', 'date: 2026-03-04, laid: 5, sitting'),
    });
    expect(clock(set('BF-1'), 'LW-1/1/e1', '2026-03-10')).toBe('03-06 running');
    expect(clock(set('incubator'), 'LW-1/1/e1', '2026-03-10')).toBe('03-06 running');
  });

  it('is set by the lamp where an egg’s age was read', () => {
    const files = {
      P: waxbills('date: 2026-03-20, sitting\ndate: 2026-03-21, aged: {7: e1}'),
    };
    expect(clock(files, 'LW-1/1/e1', '2026-03-22')).toBe('03-14 running');
  });
});

describe('the day of hatching', () => {
  it('is after the last look, but never a week before a chick can be out', () => {
    // Sat on from 3–4 March, 11 d at least: a day's grace gives the 13th, though the last look was on the 10th.
    const log = `${daily(1, 5)}
      date: 2026-03-04, sitting
      date: 2026-03-10, candled: {fertile: all}
      date: 2026-03-17, hatched: [e1, e5]`;
    const known = room({ P: waxbills(log) }, '2026-03-17');
    const first = birdIn(known, 'LW-1/1/c1');
    expect(days(first.hatched as never)).toBe('03-11…03-17');
    expect(days(hatchedOn(first) as never)).toBe('03-13…03-17');
    expect(days(hatchedOn(birdIn(known, 'LW-1/1/c2')) as never)).toBe('03-15…03-17');
  });
});
