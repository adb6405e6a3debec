import { describe, expect, it } from 'vitest';
import { survivalLines } from '../../../../src/report/terminal/season/survival.ts';
import { book, FOUR, known, ON, page, waxbills } from '../../seasons.ts';

const lines = (log: string, on = '2026-07-01') =>
  survivalLines(book({ 'LW-1': waxbills(log) }, on).totals, page());
const hatched = `${FOUR}\n date: 2026-03-15, checked\n date: 2026-03-16, hatched: all`;

describe('chicks by age', () => {
  it('are a curve and a line for each age at which any died', () => {
    const shown = survivalLines(book(known, ON).totals, page());
    expect(shown[0]).toMatch(/^ {2}100 % ███/);
    expect(shown.slice(6, 8)).toEqual([
      '  day 3       2 of 8 died       75 % left (31–93 %)',
      '  day 26      1 of 5 died       60 % left (20–85 %)',
    ]);
  });

  it('name the days to watch', () => {
    const log = [
      'date: 2026-03-01, laid: 6, sitting',
      'date: 2026-03-15, checked',
      'date: 2026-03-16, hatched: all',
      'date: 2026-03-18, checked',
      'date: 2026-03-19, checked, died: [c1, c2, c3]',
      'date: 2026-03-20, checked, died: c4',
      'date: 2026-03-29, checked',
      'date: 2026-03-30, died: c5',
    ];
    expect(lines(log.join('\n ')).join(' ')).toContain(
      'Watch day 3: 3 of 5 deaths fell there, among 6 chicks alive when it began.',
    );
  });

  it('say where ages are estimated', () => {
    expect(lines(`${hatched}\n date: 2026-03-22, died: c1`).join(' ')).toContain(
      'their ages are the likeliest',
    );
  });

  it.each([
    ['none hatched', FOUR, 'No chick was followed from a known day of hatching.'],
    [
      'none died',
      `${hatched}\n date: 2026-04-03, fledged: all`,
      'None of 4 chicks died while it was followed, the longest until day 18.',
    ],
  ])('are a sentence where %s', (_, log, sentence) => {
    expect(lines(log)).toEqual([`  ${sentence}`]);
  });
});
