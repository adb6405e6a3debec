import { expect, it } from 'vitest';
import { ownName, parents } from '../../../src/journal/grammar/names.ts';
import { read } from '../reading.ts';
import { typedValue } from './schemas.ts';

it.each(['LW-1', 'the old cock', 'LW 19 04', 'no', '~', 'e1b', 'Äffchen'])('%s can be an id', (name) => {
  expect(typedValue(ownName, name)).toEqual({ text: name });
});

it.each([
  'LW-3/2/c1',
  'e1',
  'c12',
  '3',
  '3+',
  '~3',
  'some',
  'all',
  'cock',
  'hen',
  'both',
  'hand',
  'incubator',
  'unknown',
  'ring:014',
])('%s cannot: the grammar needs it', (name) => {
  expect(typedValue(ownName, name)).toBe('bad-name');
});

it.each(['""', '" "'])('%s is no id at all', (name) => {
  expect(typedValue(ownName, name)).toBe('empty-text');
});

it('blanks around an id are not part of it', () => {
  expect(typedValue(ownName, '" LW-1 "')).toEqual({ text: 'LW-1' });
});

it.each([
  ['LW-19-04', ['LW-19-04']],
  ['LW-3/2/c1', ['LW-3/2/c1']],
  ['[A, B]', ['A', 'B']],
  ['unknown', []],
  ['Unknown', []],
  ['"?"', []],
  ['"-"', []],
])('a parent may be %s', (typed, expected) => {
  expect(typedValue(parents, typed)).toEqual(expected.map((text) => ({ text })));
});

it.each([
  ['{a: b}', 'wrong-value'],
  ['[[a]]', 'wrong-value'],
  ['""', 'empty-text'],
  ['A, B', 'names-together'],
  ['A or B', 'names-together'],
  ['[A, "B, C"]', 'names-together'],
])('a parent cannot be %s', (typed, code) => {
  expect(typedValue(parents, typed)).toBe(code);
});

it('parents that stand together are answered with the list of them', () => {
  expect(read('pair: LW-1\ncock: A , B\nhen: C or  D\nlog: []\n').fixes).toEqual([
    'where it is one of these, write `cock: [A, B]`',
    'where it is one of these, write `hen: [C, D]`',
  ]);
});
