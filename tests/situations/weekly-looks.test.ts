import { describe, expect, it } from 'vitest';
import { room } from '../rooms.ts';
import { clutchIn, days, journal, spell, waxbills } from './morning.ts';

const laid = (log: string, on: string) =>
  clutchIn(room({ a: waxbills(log) }, on), 'LW-1/1').eggs.map((egg) => days(egg.laid));

// Canary keepers: one egg a day with gaps of one to three days.
describe('a nest looked into once a week', () => {
  const week = 'date: 2026-03-01, checked';

  it('with one egg in it holds a fresh one: a day later there would be two', () => {
    expect(laid(`${week}\ndate: 2026-03-08, laid: 1`, '2026-03-08')).toEqual(['03-05…03-08']);
  });

  it('with a full clutch in it was laid some time since the last look', () => {
    expect(laid(`${week}\ndate: 2026-03-08, laid: 4`, '2026-03-08')).toEqual([
      '03-02…03-05',
      '03-03…03-06',
      '03-04…03-07',
      '03-05…03-08',
    ]);
  });

  it('never counts further back than a look that saw fewer', () => {
    expect(laid(`date: 2026-03-06, checked\ndate: 2026-03-08, laid: 1`, '2026-03-08')).toEqual([
      '03-07…03-08',
    ]);
  });
});

// Doves lay two eggs, the second two days after the first (rules of the trade, B2).
describe('a dove that lays again while her squabs are fed', () => {
  const files = {
    a: journal(
      'DD-1',
      'diamond dove',
      `
      date: 2026-03-01, laid: 1
      date: 2026-03-03, laid: 1
      date: 2026-03-16, hatched: 2
      date: 2026-03-28, fledged: 2
      date: 2026-03-30, laid: 1
      date: 2026-04-01, laid: 1, sitting
    `,
    ),
  };

  // The first egg is three days old at most on 30 March; 12–14 days of sitting from there.
  it('is not expected to hatch the day after her first egg, though nobody looked for a fortnight', () => {
    expect(spell(files, 'hatch', 'DD-1', '2026-03-29', '2026-04-14')).toEqual(['04-09 … 04-14']);
  });
});
