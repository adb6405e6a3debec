import { expect, test } from 'vitest';
import { fileName, idOfFile, printable, shellWord } from '../../src/write/names.ts';

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

test('a name is one word of a command line, and a file is no id', () => {
  expect([shellWord('LW-1'), shellWord('LW 1')]).toEqual(['LW-1', '"LW 1"']);
  expect(['pairs/LW-1.yaml', 'pairs\\LW-1.YML', 'LW-1'].map(idOfFile)).toEqual(['LW-1', 'LW-1', null]);
});
