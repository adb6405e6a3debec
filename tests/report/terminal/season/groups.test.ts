import { describe, expect, it } from 'vitest';
import { groupTable, rankingLines, tableNote } from '../../../../src/report/terminal/season/groups.ts';
import { book, FOUR, known, ON, page, pair } from '../../seasons.ts';

describe('groups beside each other', () => {
  it('have each rate as counts and share, or say that it is open', () => {
    const lines = groupTable({ title: 'pair' }, book(known, ON).byPair, page());
    expect(lines).toEqual([
      '  pair  clutches    fertile    hatched    fledged    of laid',
      '  LW-1         2  6/8 75 %   4/5 80 %   3/4 75 %   3/9 33 %',
      '  LW-2         1          –          –  1/2 50 %   0/3 0 %',
      '  LW-3         1  2/4 50 %        open          –       open',
      '  LW-4         1          –          –  2/2 100 %          –',
    ]);
  });

  it('show fewer rates on a narrow page', () => {
    const [head] = groupTable({ title: 'pair' }, book(known, ON).byPair, page(52));
    expect(head).toBe('  pair  clutches    fertile    fledged    of laid');
  });

  it('name what was not written down, and leave out who has nothing', () => {
    const blocks =
      book({ 'ZF-1': pair('ZF-1', 'zebra finch', FOUR) }, '2026-03-10', 'all', 'housing').by?.blocks ?? [];
    expect(groupTable({ title: 'housing', nameless: 'nowhere' }, blocks, page())[1]).toMatch(
      /^ {2}nowhere +1 +open/,
    );
    expect(groupTable({ title: 'pair' }, [], page())).toEqual([]);
  });

  it('stand over what their short heads mean', () => {
    expect(tableNote(page(200))).toEqual([
      '  fertile: of eggs judged; hatched: of fertile eggs; fledged: of chicks hatched; of laid: independent of eggs laid.',
    ]);
  });
});

it('pairs in order have counts, what to expect, and its interval', () => {
  const { ranking } = book(known, ON);
  const lines = ranking === null ? [] : rankingLines(ranking, page());
  expect(lines.map((line) => line.split(/ {2,}/).slice(1, 3))).toEqual([
    ['LW-1', '3 of 9'],
    ['LW-2', '0 of 3'],
  ]);
  expect(lines[0]).toMatch(/\d+ % +\d+–\d+ % +·+├─+●─+┤·+$/);
  expect(ranking && rankingLines(ranking, page(40))[0]).not.toContain('●');
});
