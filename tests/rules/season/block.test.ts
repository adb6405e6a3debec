import { describe, expect, it } from 'vitest';
import { emptyBlock, nothingReared, rearedByPair } from '../../../src/rules/season/block.ts';
import { day } from '../../rooms.ts';
import { book, clutches, FOUR, pair, waxbills } from './rooms.ts';

const files = {
  'LW-1': waxbills(
    `${FOUR}\n date: 2026-03-06, fostered: {ZF-1: e1}\n date: 2026-03-16, hatched: [e2, e3]\n date: 2026-03-20, fostered: {ZF-1: c1}`,
  ),
  'ZF-1': pair(
    'ZF-1',
    'zebra finch',
    `${FOUR}\n date: 2026-03-16, hatched: [e1, LW-1/1/e1]\n date: 2026-03-18, checked\n date: 2026-03-19, died: c1\n date: 2026-04-04, fledged: [LW-1/1/c1, LW-1/1/c3]\n date: 2026-04-22, independent: LW-1/1/c3`,
  ),
};

describe('a block', () => {
  it('of a species holds what it laid, whoever reared it', () => {
    const [waxbill, zebra] = book(files, '2026-07-01').bySpecies;
    expect([waxbill?.name, waxbill?.eggs.laid, waxbill?.chicks.hatched]).toEqual(['lavender waxbill', 4, 3]);
    expect([zebra?.name, zebra?.eggs.laid, zebra?.chicks.hatched]).toEqual(['zebra finch', 4, 1]);
    expect(waxbill?.lives).toHaveLength(3);
  });

  it('of a pair follows the chicks that it fed last', () => {
    const [waxbill, zebra] = book(files, '2026-07-01').byPair;
    expect([waxbill?.lives.length, zebra?.lives.length]).toEqual([1, 3]);
  });

  it('of nothing has counts of nothing and no figures', () => {
    const { pairs, eggs, chicks, survival, stages } = emptyBlock(day('2026-07-01'));
    expect([pairs, eggs.laid, chicks.hatched, survival.followed]).toEqual([0, 0, 0, 0]);
    expect(stages.every(({ daily }) => daily === null)).toBe(true);
  });
});

it('what a pair reared counts its own and its guests, eggs and chicks, each once', () => {
  const all = clutches(files, '2026-07-01');
  const reared = rearedByPair(all, day('2026-07-01'));
  expect(reared.get('ZF-1')).toEqual({ taken: 2, hatched: 2, fledged: 2, independent: 1, died: 1 });
  expect(reared.get('LW-1')).toEqual({ taken: 0, hatched: 2, fledged: 0, independent: 0, died: 0 });
  expect([...reared.keys()].sort()).toEqual(['LW-1', 'ZF-1']);
  expect(nothingReared().taken).toBe(0);
});

it('a pair has taken an egg of another though nothing came of it; one in the incubator is nobody’s', () => {
  const lost = {
    'LW-1': waxbills(
      `${FOUR}\n date: 2026-03-05, set: {incubator: e4}\n date: 2026-03-06, fostered: {ZF-1: [e1, e2]}\n date: 2026-03-25, lost: all`,
    ),
    'ZF-1': pair('ZF-1', 'zebra finch', `${FOUR}\n date: 2026-03-25, lost: all`),
  };
  const reared = rearedByPair(clutches(lost, '2026-07-01'), day('2026-07-01'));
  expect([...reared].map(([id, { taken }]) => [id, taken])).toEqual([['ZF-1', 2]]);
});

it('blocks of pairs stand in natural order, whichever journal is read first', () => {
  const on = (id: string) => pair(id, 'lavender waxbill', FOUR);
  const two = { a: on('LW-10'), b: on('LW-2') };
  expect(book(two, '2026-07-01').byPair.map(({ name, pairs }) => [name, pairs])).toEqual([
    ['LW-2', 1],
    ['LW-10', 1],
  ]);
  expect(book(two, '2026-07-01').totals.pairs).toBe(2);
});

it('blocks of species stand by name, whatever their pairs are called', () => {
  const two = { a: pair('A', 'zebra finch', FOUR), b: pair('B', 'lavender waxbill', FOUR) };
  expect(book(two, '2026-07-01').bySpecies.map(({ name }) => name)).toEqual([
    'lavender waxbill',
    'zebra finch',
  ]);
});
