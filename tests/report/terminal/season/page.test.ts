import { expect, it } from 'vitest';
import { aside, fitted, section, sentence, without } from '../../../../src/report/terminal/season/page.ts';
import { page } from '../../seasons.ts';

it('a part without lines has no title', () => {
  expect(section('LOSSES', [], page())).toEqual([]);
  expect(section('LOSSES', ['  none'], page())).toEqual(['LOSSES', '  none']);
});

it('sentences are set in and wrapped', () => {
  expect(sentence('one two three', page(9))).toEqual(['  one two', '  three']);
  expect(aside('one', page(9))).toEqual(['  one']);
});

it('of several tables the first that fits is drawn', () => {
  const rows = [
    ['pair', 'eggs', 'young'],
    ['LW-1', '12', '8'],
  ];
  const narrow = without(rows, [1]);
  expect(narrow).toEqual([
    ['pair', 'young'],
    ['LW-1', '8'],
  ]);
  const tables = [
    { rows, right: [1, 2] },
    { rows: narrow, right: [1] },
  ];
  expect(fitted(tables, page(40))).toEqual(['  pair  eggs  young', '  LW-1    12      8']);
  expect(fitted(tables, page(14))).toEqual(['  pair  young', '  LW-1      8']);
  expect(fitted(tables, page(4))).toHaveLength(2);
});
