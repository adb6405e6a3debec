import { describe, expect, it } from 'vitest';
import { rankingOf } from '../../../src/rules/season/ranking.ts';
import { book, FOUR, pair } from './rooms.ts';

/** A pair whose clutches of four each bring so many to independence, one clutch a year. */
function reared(id: string, each: readonly number[]): string {
  const clutches = each.map((number, i) => {
    const eggs = ['e1', 'e2', 'e3', 'e4'];
    const log =
      number === 0
        ? ''
        : `date: 2026-03-16, hatched: [${eggs.slice(0, number).join(', ')}]\n date: 2026-04-03, fledged: all\n date: 2026-04-22, independent: all`;
    const rest = number === 4 ? '' : 'date: 2026-04-24, lost: {clear: all}';
    return `${FOUR}\n ${log}\n ${rest}`.replaceAll('2026-', `${2010 + i}-`);
  });
  return pair(id, 'lavender waxbill', clutches.join('\n'));
}

const order = (files: Record<string, string>) => rankingOf(book(files, '2026-07-01').byPair);

describe('pairs in order', () => {
  it('one good clutch does not lead', () => {
    const ranking = order({
      lucky: reared('lucky', [4]),
      steady: reared('steady', [4, 4, 4, 4, 3, 4, 4, 4]),
      poor: reared('poor', [1, 0, 2, 1, 0, 1]),
      usual: reared('usual', [2, 3, 2, 2, 3, 2]),
    });
    expect(ranking?.measure).toBe('overall');
    expect(ranking?.rows.map(({ name }) => name)).toEqual(['steady', 'lucky', 'usual', 'poor']);
    expect(ranking?.rows[1]).toMatchObject({ k: 4, n: 4 });
    expect(ranking?.rows[1]?.mean).toBeLessThan(ranking?.rows[0]?.mean ?? 0);
  });

  it.each([
    ['one pair', { A: reared('A', [2, 3]) }],
    ['pairs of which all did', { A: reared('A', [4]), B: reared('B', [4]) }],
    ['pairs of which none did', { A: reared('A', [0]), B: reared('B', [0]) }],
    [
      'pairs without a clutch',
      {
        A: pair('A', 'zebra finch', 'date: 2026-01-01, paired'),
        B: pair('B', 'zebra finch', 'date: 2026-01-01, paired'),
      },
    ],
  ])('there is none for %s', (_, files) => {
    expect(order(files)).toBeNull();
  });

  it('leaves out a pair of which nothing is known yet', () => {
    const ranking = order({
      A: reared('A', [4, 3]),
      B: reared('B', [1, 2]),
      C: pair('C', 'lavender waxbill', 'date: 2026-06-25, laid: 2'),
    });
    expect(ranking?.rows.map(({ name }) => name)).toEqual(['A', 'B']);
  });

  it('falls back on hatching while nobody is independent yet', () => {
    const young = (hatched: string, lost: string) =>
      `${FOUR}\n date: 2026-03-16, hatched: ${hatched}\n date: 2026-03-24, lost: {clear: ${lost}}`;
    const files = {
      A: pair('A', 'lavender waxbill', young('[e1, e2, e3]', 'e4')),
      B: pair('B', 'lavender waxbill', young('e1', '[e2, e3, e4]')),
    };
    const ranking = rankingOf(book(files, '2026-03-30').byPair);
    expect(ranking?.measure).toBe('hatchOfLaid');
    expect(ranking?.rows.map(({ name }) => name)).toEqual(['A', 'B']);
  });
});
