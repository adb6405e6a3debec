import { expect, it } from 'vitest';
import { joined, none } from '../../src/room/lists.ts';

it('a list and one more is another list, and leaves the first as it was', () => {
  const first = joined(none, 'e1');
  const second = joined(first, 'e2');
  expect([none, first, second]).toEqual([[], ['e1'], ['e1', 'e2']]);
});

it('what joins may itself be a list', () => {
  expect(joined([['e1']], ['e2'])).toEqual([['e1'], ['e2']]);
});
