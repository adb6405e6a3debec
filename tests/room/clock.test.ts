import { describe, expect, it } from 'vitest';
import { hatchedOn, sittingStart } from '../../src/room/clock.ts';
import { day, room } from '../rooms.ts';
import { clock, daily, sitting } from './clocks.ts';
import { birdIn, clutchIn, days, journal, waxbills } from './facts.ts';

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
    const looked = `${daily(1, 2)}\ndate: 2026-03-04, checked: {eggs: 2}`;
    expect(sitting(looked, '2026-03-04')).toBeNull();
    expect(sitting(looked, '2026-03-05')).toBe('03-02 from e2');
  });

  it('of fewer eggs, while nobody looks whether more came, can have begun as late as with the last awaited', () => {
    expect(sitting('date: 2026-03-01, laid: 1', '2026-03-03')).toBeNull();
    expect(sitting('date: 2026-03-01, laid: 1', '2026-03-20')).toBe(
      '03-01…03-04 from e1, more may have come',
    );
    expect(sitting(daily(1, 2), '2026-03-20')).toBe('03-02…03-04 from e2, more may have come');
    // A look while another egg was still to come says nothing of it.
    const soon = `${daily(1, 2)}\ndate: 2026-03-03, checked: {eggs: 2}`;
    expect(sitting(soon, '2026-03-20')).toBe('03-02…03-04 from e2, more may have come');
    // No day that is still to come is one on which it began.
    expect(sitting('date: 2026-03-01, laid: 1', '2026-03-04', 'masked finch')).toBe(
      '03-01…03-04 from e1, more may have come',
    );
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
  it('is that of the bird list or of the look where nobody knows the egg or how long the species sits', () => {
    const known = room(
      {
        'birds.yaml': 'birds:\n  - {id: A, hatched: 2025-05-04}\n  - {id: B}\n',
        P: journal('X-1', 'ridge finch', 'date: 2026-03-01, laid: 1\ndate: 2026-03-10, hatched: e1'),
      },
      '2026-03-17',
    );
    const on = (name: string) => {
      const span = hatchedOn(birdIn(known, name));
      return span && days(span);
    };
    // Nobody looked in between; no egg of a small cage bird hatches in less than half of ten days.
    expect([on('A'), on('B'), on('X-1/1/c1')]).toEqual(['05-04', null, '03-06…03-10']);
  });

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

  // Laid daily and sat on for 11–13 d: five eggs hatch within four days of laying and two of sitting.
  it('is no longer before that of the others than eggs of a clutch hatch apart', () => {
    const first = (log: string) => {
      const known = room({ P: waxbills(log) }, '2026-04-20');
      return days(hatchedOn(birdIn(known, 'LW-1/1/c1')) as never);
    };
    // Found on the first of March, they may have been laid since the middle of February.
    const found = 'date: 2026-02-10, checked\ndate: 2026-03-01, laid: 5, sitting';
    const hatched = 'date: 2026-03-13, hatched: e1';
    expect(first(`${found}\n${hatched}`)).toBe('03-02…03-13');
    expect(first(`${found}\n${hatched}\ndate: 2026-03-14, hatched: e2`)).toBe('03-08…03-13');
    // Three or more may be the five that are usual at most.
    const uncounted = found.replace('laid: 5', 'laid: 3+');
    expect(first(`${uncounted}\n${hatched}\ndate: 2026-03-14, hatched: e2`)).toBe('03-08…03-13');
    // Set under them from store days after the others, it hatches by itself.
    const stored = `${found}\ndate: 2026-03-02, pulled: e5\ndate: 2026-03-06, set: e5\n${hatched}`;
    expect(first(`${stored}\ndate: 2026-03-19, hatched: e5`)).toBe('03-02…03-13');
  });
});

describe('sitting, where little is known', () => {
  const begun = (species: string, log: string, on: string, file = '') => {
    const known = room(
      { ...(file === '' ? {} : { 'species/own.yaml': file }), P: journal('P-1', species, log) },
      on,
    );
    const start = sittingStart(clutchIn(known, 'P-1/1'), day(on));
    return start && `${days(start.span)} ${start.inferred ? `from ${start.eggs}` : 'seen'}`;
  };
  const four = daily(1, 4);

  it('seen on fewer eggs than the species begins with, it can have begun with the last of them', () => {
    expect(begun('lavender waxbill', `${daily(1, 2)}\ndate: 2026-03-04, sitting`, '2026-03-04')).toBe(
      '03-02…03-04 seen',
    );
  });

  it('of a species of which nobody knows when it begins, seen: from the first egg on', () => {
    expect(begun('ridge finch', `${four}\ndate: 2026-03-06, sitting`, '2026-03-06')).toBe('03-01…03-06 seen');
  });

  it('of one that begins with the last egg, seen: from the last egg on', () => {
    const file = 'species: late sitter\nsitting-from: last\n';
    const log = `${four}\ndate: 2026-03-06, sitting`;
    expect(begun('late sitter', log, '2026-03-06', file)).toBe('03-04…03-06 seen');
  });

  it('of one that begins with the last egg, not looked at: up to the last that small finches lay', () => {
    // Up to six eggs, of a species of which nobody wrote how many it lays (common practice).
    const file = 'species: late sitter\nsitting-from: last\n';
    expect(begun('late sitter', daily(1, 2), '2026-03-20', file)).toBe(
      '03-02…03-06 from e2, more may have come',
    );
    expect(begun('late sitter', daily(1, 3), '2026-03-20', file)).toBe('03-03 from e3');
  });

  it('seen off a day before, it began that night; off later, it had begun before', () => {
    const off = (on: string, sat: string) =>
      begun(
        'lavender waxbill',
        `${four}\ndate: 2026-03-${on}, sitting: off\ndate: 2026-03-${sat}, sitting`,
        '2026-03-09',
      );
    expect(off('05', '06')).toBe('03-06 seen');
    expect(off('05', '08')).toBe('03-06…03-08 seen');
    expect(off('08', '06')).toBe('03-03…03-06 seen');
    // Found cold and warm on one day: it began on that day at the latest.
    expect(off('06', '06')).toBe('03-03…03-06 seen');
    expect(begun('lavender waxbill', `${four}\ndate: 2026-03-05, sitting: off`, '2026-03-05')).toBe(
      '03-03…03-04 from e3–e4',
    );
  });

  it('not seen, of eggs laid on days that nobody knows, is as wide as those', () => {
    // Three eggs on the 20th, found at a first look: e3 laid from the 7th to the 20th; with e4 on the 21st from the 17th on.
    const log = 'date: 2026-03-20, laid: 3\ndate: 2026-03-21, laid: 1';
    expect(begun('lavender waxbill', log, '2026-03-21')).toBe('03-17…03-21 from e3–e4');
    expect(begun('lavender waxbill', 'date: 2026-03-20, laid: 3', '2026-03-20')).toBe('03-07…03-20 from e3');
  });

  it('not seen, on eggs that were not counted, is some day between the oldest and the newest', () => {
    expect(
      begun('lavender waxbill', 'date: 2026-03-02, laid: 1\ndate: 2026-03-05, laid: 2+', '2026-03-05'),
    ).toBe('03-02…03-05 from null');
  });

  it('of two eggs of a budgerigar not begun before the first, laid every other day', () => {
    expect(begun('budgerigar', 'date: 2026-03-01, laid: 1', '2026-03-01')).toBe('03-01 from e1');
  });
});

describe('an egg’s clock, when the egg goes from place to place', () => {
  const laid = `${daily(1, 5)}\ndate: 2026-03-04, sitting`;
  const foster = 'date: 2026-03-05, laid: 5, sitting';
  const moved = (moves: string, on: string, other = foster) =>
    clock(
      { P: waxbills(`${laid}\n${moves}`), Q: journal('BF-1', 'bengalese finch', other) },
      'LW-1/1/e1',
      on,
    );

  it('runs on under a foster that has no clutch, from the day it came', () => {
    // Sat on from the 3rd or 4th, it was taken over on the 8th.
    expect(moved('date: 2026-03-08, fostered: {BF-1: e1}', '2026-03-10', '')).toBe('03-03…03-04 running');
  });

  it('stands still with its keeper, and runs in the incubator', () => {
    expect(moved('date: 2026-03-08, fostered: {hand: e1}', '2026-03-10')).toBe('03-03…03-04 stopped');
    expect(moved('date: 2026-03-08, fostered: {incubator: e1}', '2026-03-10')).toBe('03-03…03-04 running');
  });

  it('has not begun in an egg taken away before anybody sat, and begins where it is set', () => {
    const moves = 'date: 2026-03-02, pulled: e1';
    expect(moved(moves, '2026-03-03')).toBeNull();
    expect(moved(`${moves}\ndate: 2026-03-07, set: {BF-1: e1}`, '2026-03-08')).toBe('03-07 running');
    expect(moved(`${moves}\ndate: 2026-03-07, set: {incubator: e1}`, '2026-03-08')).toBe('03-07 running');
  });

  it('may not have begun in a nest where nobody was seen to sit, until the lamp shows that it had', () => {
    const unseen = (lamp: string) => {
      const log = `date: 2026-03-05, laid: 5\n${lamp}date: 2026-03-10, set: {incubator: all}`;
      return clock({ P: waxbills(log) }, 'LW-1/1/e5', '2026-03-12');
    };
    // Cold until the 10th, for all that anybody knows, or sat on since before the 5th.
    const [unsure, grown] = [unseen(''), unseen('date: 2026-03-10, candled: {fertile: all}\n')];
    expect(unsure).toMatch(/…03-10 running$/);
    expect(grown).toMatch(/03-05 running$/);
    expect(unseen('date: 2026-03-10, candled: {clear: all}\n')).toBe(unsure);
    // What has begun does not begin anew: in the incubator it ran since the 10th, whatever was before.
    expect(unsure?.split('…')[0]).toBe(grown?.split(/…| /)[0]);
  });

  it('adds up over several places', () => {
    // Three or four days until the 7th, none in store, then from the 10th; three days more, and the store again.
    const moves = `date: 2026-03-07, pulled: e1
      date: 2026-03-10, set: e1
      date: 2026-03-13, pulled: e1
      date: 2026-03-15, set: {incubator: e1}`;
    expect(moved(moves, '2026-03-14')).toBe('03-06…03-07 stopped');
    // Six or seven days until the 13th: as if begun on the 8th or 9th.
    expect(moved(moves, '2026-03-16')).toBe('03-08…03-09 running');
  });

  it('follows the age that the lamp read, not the places before', () => {
    const moves = `date: 2026-03-07, pulled: e1
      date: 2026-03-10, set: e1
      date: 2026-03-12, aged: {4: e1}`;
    expect(moved(moves, '2026-03-11')).toBe('03-06…03-07 running');
    // Four days along on the 12th: the 8th.
    expect(moved(moves, '2026-03-12')).toBe('03-08 running');
    // Five days along on the 6th and six when it was pulled on the 7th; set on the 10th, as if begun on the 4th.
    const early = 'date: 2026-03-06, aged: {5: e1}\ndate: 2026-03-07, pulled: e1\ndate: 2026-03-10, set: e1';
    expect(moved(early, '2026-03-11')).toBe('03-04 running');
    expect(moved('date: 2026-03-06, aged: {4.6: e1}', '2026-03-07')).toBe('03-01 running');
  });
});

describe('the clock of an egg whose age the lamp read', () => {
  const started = (log: string, egg = 'LW-1/1/e1') =>
    clock(
      { P: waxbills(log), Q: journal('BF-1', 'bengalese finch', 'date: 2026-03-04, laid: 4, sitting') },
      egg,
      '2026-03-14',
    );

  it('is set by that, though it was moved before, and though it was counted by that look', () => {
    const moved = 'date: 2026-03-01, laid: 3, sitting\ndate: 2026-03-08, set: {BF-1: all}';
    expect(started(`${moved}\ndate: 2026-03-12, aged: {6: [LW-1/1/e1]}`)).toBe('03-06 running');
    expect(started('date: 2026-03-01, sitting\ndate: 2026-03-09, aged: {6: 4}', 'LW-1/1/e4')).toBe(
      '03-03 running',
    );
  });
});

it('an egg that nobody put to warmth hatched when it is told to have', () => {
  const log = 'date: 2026-03-05, laid: 1, pulled: 1\ndate: 2026-03-18, hatched: e1';
  const chick = birdIn(room({ P: waxbills(log) }, '2026-03-20'), 'LW-1/1/c1');
  expect(hatchedOn(chick)).toEqual(chick.hatched);
});
