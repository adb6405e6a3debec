import { expect, test } from 'vitest';
import { fileName, printable } from '../../src/write/names.ts';

test.each([
  ['LW-1', 'LW-1'],
  ['Prachtfinken 3', 'Prachtfinken-3'],
  ['雀-1', '雀-1'],
  ['../../LW', '--..-LW'],
  ['.hidden', '-hidden'],
  ['a:b*c?', 'a-b-c-'],
])('the journal of %s is %s.yaml', (pair, name) => {
  expect(fileName(pair)).toBe(name);
});

test('a name in a comment stays on its line', () => {
  expect(printable('LW\n1')).toBe('LW 1');
});
