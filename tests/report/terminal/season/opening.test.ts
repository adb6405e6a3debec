import { describe, expect, it } from 'vitest';
import { openingLines } from '../../../../src/report/terminal/season/opening.ts';
import { book, FOUR, known, ON, waxbills } from '../../seasons.ts';

const told = (files: Parameters<typeof book>[0], on: string) => openingLines(book(files, on), 500).join(' ');

describe('the season in a few sentences', () => {
  it('tells eggs, young, causes and days', () => {
    expect(told(known, ON)).toBe(
      'Of 19 eggs 8 hatched. 6 left the nest and 4 feed themselves. The commonest loss of eggs was “clear” (3 of 6). The commonest loss of young was “cold” (2 of 3). No pair stands out beyond what luck can do.',
    );
  });

  it.each([
    ['one egg', 'date: 2026-03-01, laid: 1', 'Of 1 egg none hatched so far.'],
    [
      'young in the nest',
      `${FOUR}\n date: 2026-03-16, hatched: [e1, e2]`,
      'Of 4 eggs 2 hatched. None has left the nest; 2 are not known to feed themselves yet.',
    ],
    [
      'one of two young out of the nest',
      `${FOUR}\n date: 2026-03-16, hatched: [e1, e2]\n date: 2026-04-04, fledged: c1, died: c2`,
      'Of 4 eggs 2 hatched. 1 left the nest; 1 is not known to feed itself yet.',
    ],
    [
      'young that all died after they flew',
      `${FOUR}\n date: 2026-03-16, hatched: e1\n date: 2026-04-04, fledged: c1\n date: 2026-04-06, died: c1`,
      'Of 4 eggs 1 hatched. 1 left the nest, none came to feed itself.',
    ],
  ])('of %s', (_, log, expected) => {
    expect(told({ 'LW-1': waxbills(log) }, '2026-04-10')).toBe(expected);
  });
});
