import { describe, expect, it } from 'vitest';
import { fertilityOf } from '../../src/room/fertility.ts';
import { room } from '../rooms.ts';
import { due, eggIn, journal, spell, waxbills } from './morning.ts';

// Lavender waxbills: candled on day 5–6 of sitting, which begins with the third or fourth egg.
const laid = `
  date: 2026-03-01, laid: 1
  date: 2026-03-02, laid: 1
  date: 2026-03-03, laid: 1
  date: 2026-03-04, laid: 1, sitting
`;

// Keepers’ pages: veins are visible once an egg was sat on for at least four days.
describe('eggs called clear on the second day of sitting', () => {
  const early = { a: waxbills(`${laid}\ndate: 2026-03-06, candled: {clear: all}`) };

  it('are as unsure as before: they are candled again on their day', () => {
    expect(spell(early, 'candle', 'LW-1', '2026-03-05', '2026-03-20')).toEqual(['03-09 … 03-10']);
  });

  // Sitting was seen on the 4th and can have begun with e3 on the 3rd: one in ten is out by the 14th.
  it('may hatch: live food is asked for in time, and the hatch is expected', () => {
    expect(spell(early, 'live-food', 'LW-1', '2026-03-05', '2026-03-15')).toEqual(['03-12 … 03-15']);
    expect(due(early, '2026-03-16')).toContain('LW-1 hatch');
  });

  it('called clear on their day are not waited for', () => {
    const clear = { a: waxbills(`${laid}\ndate: 2026-03-09, candled: {clear: all}`) };
    for (const task of ['candle', 'live-food', 'hatch'])
      expect(spell(clear, task, 'LW-1', '2026-03-09', '2026-03-25'), task).toEqual([]);
  });
});

// Nobody wrote of sitting: with e3 or e4 it began on the 3rd or 4th, and the lamp tells from the 9th on.
describe('an egg called clear on its day, with the first word of sitting later', () => {
  const judged = `${laid.replace(', sitting', '')}\ndate: 2026-03-10, candled: {fertile: [e1, e3, e4], clear: e2}`;
  const fertility = (more: string, on: string) =>
    fertilityOf(eggIn(room({ a: waxbills(`${judged}\n${more}`) }, on), 'LW-1/1/e2'));

  it('stays clear', () => {
    expect(fertility('', '2026-03-12')).toBe('clear');
    expect(fertility('date: 2026-03-13, sitting', '2026-03-13')).toBe('clear');
    expect(fertility('date: 2026-03-12, sitting: off\ndate: 2026-03-13, sitting', '2026-03-13')).toBe(
      'clear',
    );
  });

  it('is as unsure as before where the keeper corrects that sitting began the day before the lamp', () => {
    const corrected = 'date: 2026-03-08, sitting: off\ndate: 2026-03-09, sitting';
    expect(fertility(corrected, '2026-03-13')).toBeNull();
  });
});

describe('eggs set back late, with nobody seen sitting', () => {
  const stored = {
    a: waxbills(`
      date: 2026-03-01, laid: 1, pulled: e1
      date: 2026-03-02, laid: 1, pulled: e2
      date: 2026-03-03, laid: 1, pulled: e3
      date: 2026-03-04, laid: 1, pulled: e4
      date: 2026-03-07, set: all
    `),
  };

  it('are candled by the day that they were set, not by the day that they were laid', () => {
    expect(spell(stored, 'candle', 'LW-1', '2026-03-05', '2026-03-20')).toEqual(['03-12 … 03-13']);
  });
});

describe('eggs given to a pair that has sat for four days', () => {
  const files = (more = '') => ({
    a: waxbills(`
      date: 2026-03-05, laid: 1
      date: 2026-03-06, laid: 1
      date: 2026-03-07, laid: 1, fostered: {BF-1: all}
    `),
    b: journal(
      'BF-1',
      'bengalese finch',
      `date: 2026-03-01, laid: 1\ndate: 2026-03-02, laid: 1\ndate: 2026-03-03, laid: 1, sitting\n${more}`,
    ),
  });
  const told =
    'date: 2026-03-09, candled: {fertile: [e1, e2, e3], unsure: [LW-1/1/e1, LW-1/1/e2, LW-1/1/e3]}';

  // Bengalese finches are candled on day 5–7: the foster’s own eggs from the 8th, the guests, given on the 7th, from the 12th.
  it('are candled after the foster’s own, by their own days', () => {
    expect(due(files(told), '2026-03-08', 'BF-1')).toEqual(['BF-1 candle']);
    expect(due(files(told), '2026-03-11', 'BF-1')).toEqual([]);
    expect(due(files(told), '2026-03-12', 'BF-1')).toEqual(['BF-1 candle LW-1/1/e1 LW-1/1/e2 LW-1/1/e3']);
  });
});
