import { expect, it } from 'vitest';
import { append } from '../../../src/journal/text/append.ts';

it('adds more items than one call could take as arguments', () => {
  const list = [0];
  append(list, new Array(300_000).fill(1));
  expect(list).toHaveLength(300_001);
});
