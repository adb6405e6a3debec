import { expect, it } from 'vitest';
import { funnelLines } from '../../../../src/report/terminal/season/funnel.ts';
import { book, FOUR, known, ON, page, waxbills } from '../../seasons.ts';

it('from egg to independent each step is a bar beside its number', () => {
  const lines = funnelLines(book(known, ON).totals, page());
  expect(lines.map((line) => line.trim().split(/ +/).slice(0, 2).join(' '))).toEqual([
    'laid 19',
    'fertile 11',
    'hatched 8',
    'fledged 6',
    'independent 4',
    'Beside these:',
    'taken by',
  ]);
  expect(lines[0]?.length).toBe(80);
});

it('who is in no bar is named below, and nothing where all are', () => {
  expect(funnelLines(book(known, ON).totals, page(200)).at(-1)).toBe(
    '  Beside these: 4 eggs without an end yet, 2 eggs of unknown fertility, 1 egg taken by our hand, 1 young bird gone before that.',
  );
  const clear = book(
    { 'LW-1': waxbills(`${FOUR}\n date: 2026-03-20, lost: {clear: all}`) },
    '2026-07-01',
  ).totals;
  expect(funnelLines(clear, page())).toHaveLength(5);
});
