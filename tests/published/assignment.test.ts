import { describe, expect, it } from 'vitest';
import { cheapestAssignment } from '../../src/statistics/assignment.ts';

function cost(matrix: number[][]): number {
  const assigned = cheapestAssignment(matrix);
  const rows = new Set(assigned.map(([row]) => row));
  const columns = new Set(assigned.map(([, column]) => column));
  const most = Math.min(matrix.length, matrix[0]?.length ?? 0);
  expect([assigned.length, rows.size, columns.size]).toEqual([most, most, most]);
  return assigned.reduce((sum, [row, column]) => sum + (matrix[row]?.[column] ?? Number.NaN), 0);
}

/** `1 2; 3 4` as rows of numbers. */
const matrix = (text: string) => text.split(';').map((row) => row.trim().split(/\s+/).map(Number));

// Several of these have more than one best assignment, so that the cost is asserted; all were also searched through.
describe('the least cost of an assignment', () => {
  it.each([
    ['250 400 350; 400 600 350; 200 400 250', 950, 'Harvard Math 20, hand-out on the Hungarian method'],
    ['90 75 75 80; 35 85 55 65; 125 95 90 105; 45 110 95 115', 275, 'the same hand-out'],
    ['5 9 1; 10 3 2; 8 7 4', 12, 'documented example of the Python package munkres'],
    [
      '12 9 27 10 23; 7 13 13 30 19; 25 18 26 11 26; 9 28 26 23 13; 16 16 24 6 9',
      51,
      'tests of the Python package munkres',
    ],
    ['400 150 400 1; 400 450 600 2; 300 225 300 3', 452, 'tests of scikit-learn and scipy, rectangular'],
    ['5 3 -1; 2 4 -6; 9 9 -9', -4, 'computed; costs below nothing'],
  ])('%s is %i (%s)', (text, expected) => {
    expect(cost(matrix(text))).toBe(expected);
  });

  it('Kuhn 1955, Nav. Res. Log. Q. 2:83: the greatest merit is 27, by 1, 3, 4 and 2', () => {
    const merit = matrix('8 7 9 9; 5 2 7 8; 6 1 4 9; 2 3 2 6');
    const assigned = cheapestAssignment(merit.map((row) => row.map((value) => -value)));
    expect([...assigned].sort()).toEqual([
      [0, 0],
      [1, 2],
      [2, 3],
      [3, 1],
    ]);
  });
});
