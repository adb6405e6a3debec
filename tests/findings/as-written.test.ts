import { expect, it } from 'vitest';
import { asWritten } from '../../src/findings/as-written.ts';

it.each([
  ['three', 'a count is a number alone: 3'],
  ['Twelve eggs', 'a count is a number alone: 12'],
  ['3 chicks', 'a count is a number alone: 3'],
  ['1 new egg', 'a count is a number alone: 1'],
  ['+1', 'a count is a number alone: 1'],
  ['egg 4', 'write `e4`'],
  ['4th Egg', 'write `e4`'],
  ['chick 2', 'write `c2`'],
  ['E1', 'write `e1`'],
  ['e1-e3', 'write `[e1, e2, e3]`'],
  ['C2 – C3', 'write `[c2, c3]`'],
  ['e1 e2', 'write `[e1, e2]`'],
  ['e1 and e2', 'write `[e1, e2]`'],
  ['All', 'write `all`'],
  ['all of them', 'write `all`'],
  ['every chick', 'write `all`'],
  ['the hen', 'write `hen`'],
  ['Cock', 'write `cock`'],
  ['c1+c2+c4', 'write `[c1, c2, c4]`'],
])('%s: %s', (said, meant) => {
  expect(asWritten(said)).toBe(meant);
});

it.each([
  'smallest chick',
  'LW 26 014',
  'ones',
  '3 weeks',
  'e3-e1',
  'e1',
  'e1 or so',
  'all',
  'all but one',
  'hen',
  'LW-1/2/e1',
  '',
])('`%s` is no count and names no egg or chick', (said) => {
  expect(asWritten(said)).toBeNull();
});
