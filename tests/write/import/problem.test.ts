import { expect, test } from 'vitest';
import { type ImportProblem, RowProblems } from '../../../src/write/import/problem.ts';

test('a row’s problems carry its file and number', () => {
  const found: ImportProblem[] = [];
  new RowProblems('old.csv', 12, found).add('Laid', 'no date');
  expect(found).toEqual([
    { file: 'old.csv', row: 12, line: null, column: 'Laid', text: 'no date', hint: null },
  ]);
});
