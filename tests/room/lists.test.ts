import { expect, it } from 'vitest';
import { joined, likeLast, none, tellAll } from '../../src/room/lists.ts';

it('a list and one more is another list, and leaves the first as it was', () => {
  const first = joined(none, 'e1');
  const second = joined(first, 'e2');
  expect([none, first, second]).toEqual([[], ['e1'], ['e1', 'e2']]);
});

it('what joins may itself be a list', () => {
  expect(joined([['e1']], ['e2'])).toEqual([['e1'], ['e2']]);
});

it('what is told of all is one thing, and joins what was told of each before', () => {
  const young = [{ seen: none as readonly { on: number }[] }, { seen: [{ on: 1 }] }];
  tellAll(young, 'seen', { on: 2 });
  expect(young.map(({ seen }) => seen)).toEqual([[{ on: 2 }], [{ on: 1 }, { on: 2 }]]);
  expect(young[1]?.seen[1]).toBe(young[0]?.seen[0]);
  tellAll(young.slice(0, 1), 'seen', { on: 3 });
  expect(young.map(({ seen }) => seen.length)).toEqual([2, 2]);
});

it('what is like the last in every field is the last, and nothing else is', () => {
  const alike = likeLast<{ from: number; to: number | null }>();
  const first = alike({ from: 1, to: null });
  expect(alike({ from: 1, to: null })).toBe(first);
  expect(alike({ from: 1, to: 2 })).toEqual({ from: 1, to: 2 });
  expect(alike({ from: 1, to: null })).not.toBe(first);
});
