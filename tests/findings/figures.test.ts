import { expect, it } from 'vitest';
import { inFigures } from '../../src/findings/figures.ts';

it.each([
  ['three', 'a count is a number alone: 3'],
  ['Twelve eggs', 'a count is a number alone: 12'],
  ['3 chicks', 'a count is a number alone: 3'],
  ['1 new egg', 'a count is a number alone: 1'],
  ['+1', 'a count is a number alone: 1'],
  ['egg 4', 'write `e4`'],
  ['4th Egg', 'write `e4`'],
  ['chick 2', 'write `c2`'],
])('%s: %s', (said, meant) => {
  expect(inFigures(said)).toBe(meant);
});

it.each(['smallest chick', 'LW 26 014', 'ones', '3 weeks', 'e1', ''])(
  '`%s` is no number in words',
  (said) => {
    expect(inFigures(said)).toBeNull();
  },
);
