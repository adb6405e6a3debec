import { expect, it } from 'vitest';
import { lossLines } from '../../../../src/report/terminal/season/losses.ts';
import { book, FOUR, known, ON, page, waxbills } from '../../seasons.ts';

it('causes stand in order, the commonest first, eggs and young apart', () => {
  const lines = lossLines(book(known, ON).totals, page());
  expect(lines.map((line) => line.replace(/[█▏▎▍▌▋▊▉]+$/, '').trimEnd())).toEqual([
    '  eggs    clear               3',
    '          addled              1',
    '          broken              1',
    '          dead-in-shell       1',
    '  young   cold                2',
    '          window              1',
  ]);
});

it('a cause that nobody wrote is said to be unknown', () => {
  const lines = lossLines(
    book({ 'LW-1': waxbills(`${FOUR}\n date: 2026-03-20, lost: all`) }, '2026-07-01').totals,
    page(),
  );
  expect(lines[0]).toContain('cause not known');
});

it('a season without losses is a sentence', () => {
  expect(lossLines(book({ 'LW-1': waxbills(FOUR) }, '2026-03-10').totals, page())).toEqual([
    '  Nothing was lost.',
  ]);
});
