import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { survivalWords } from '../../../src/report/terminal/season/survival.ts';
import { seasonText } from '../../../src/report/terminal/season.ts';
import type { GroupingName } from '../../../src/rules/season/groupings.ts';
import { expectGolden } from '../../golden.ts';
import { FORBIDDEN, hostileText, withoutColour } from '../hostile.ts';
import { book, FOUR, known, ON, pair } from '../seasons.ts';

const text = (over: Partial<{ width: number; color: boolean; by: GroupingName }> = {}) => {
  const { width = 80, color = false, by = null } = over;
  return seasonText(book(known, ON, 'all', by), { width, color });
};

describe.each([80, 120])('the page at %i columns', (width) => {
  test.each<[string, GroupingName | undefined]>([
    ['whole', undefined],
    ['pair', 'pair'],
  ])('%s', (name, by) => {
    expectGolden(
      import.meta.url,
      `${width}-${name}.txt`,
      text({ width, ...(by === undefined ? {} : { by }) }),
    );
  });
});

it('colour says nothing that the words do not', () => {
  const colored = text({ color: true });
  expect(colored).not.toBe(withoutColour(colored));
  expect(withoutColour(colored)).toBe(text());
});

it('stands beside the seasons before, and season by season', () => {
  const ended = `${FOUR}\n date: 2026-03-16, hatched: [e1, e2, e3]\n date: 2026-03-20, lost: {clear: e4}`;
  const all = ['LW-1', 'LW-2', 'LW-3'].map((id) => [
    id,
    pair(id, 'lavender waxbill', `${ended.replaceAll('2026', '2025')}\n ${ended}`),
  ]);
  const files = Object.fromEntries(all);
  const one = seasonText(book(files, '2026-03-21', '2026'), { width: 80, color: false });
  expect(one).toContain('2026 BESIDE 2025');
  expect(one).toMatch(/hatched of laid +75 % +75 % +−\d+ to \+\d+ points/);
  expect(one).toContain('No difference that these numbers could show.');
  const both = seasonText(book(files, '2026-03-21', 'all'), { width: 80, color: false });
  expect(both).toContain('SEASON BY SEASON');
});

it('what a journal says cannot take over the terminal', () => {
  fc.assert(
    fc.property(hostileText, (name) => {
      const files = {
        'ZF-1': pair(
          'ZF-1',
          'zebra finch',
          `${FOUR}\n date: 2026-03-16, hatched: [e1, e2]\n date: 2026-03-18, died: all`,
        ),
      };
      const found = book(files, '2026-07-01', 'all', 'species');
      const [block] = found.bySpecies;
      if (block === undefined) throw new Error('no block');
      block.name = name;
      block.chicks.died = { [name]: 2 };
      const hostile = {
        ...found,
        room: name,
        by: found.by && { ...found.by, blocks: [block] },
        totals: { ...found.totals, chicks: block.chicks },
      };
      expect(seasonText(hostile, { width: 80, color: false })).not.toMatch(FORBIDDEN);
    }),
  );
});

it('tells of more chicks than one call could take as arguments', () => {
  const { totals } = book(known, ON, 'all', null);
  const [life] = totals.lives;
  const lives = new Array(300_000).fill(life);
  const survival = { rows: [], followed: lives.length, danger: null, estimated: false };
  expect(survivalWords({ lives, survival }).instead).toMatch(/^None of 300000 chicks died/);
});
