import { expect, it } from 'vitest';
import { fitted, without } from '../../../../src/report/terminal/season/page.ts';
import { page } from '../../seasons.ts';

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
