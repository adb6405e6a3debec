import { describe, expect, it } from 'vitest';
import { columns } from '../../../src/report/terminal/columns.ts';

const rows = [
  ['bird', 'where', 'F'],
  ['LW-1', 'flight 2', '0'],
  ['LW-12', 'a', '0.125'],
];

describe('rows below one another', () => {
  it('have columns as wide as their widest cell, numbers at the right', () => {
    expect(columns(rows, { width: 80, indent: 2, right: [2], cut: 1 })).toEqual([
      '  bird   where         F',
      '  LW-1   flight 2      0',
      '  LW-12  a         0.125',
    ]);
  });

  it('are cut in the column that may be, where the line is too long', () => {
    const lines = columns(rows, { width: 22, indent: 2, right: [2], cut: 1 });
    expect(lines[1]).toBe('  LW-1   fligh…      0');
    expect(lines.map((line) => line.length)).toEqual([22, 22, 22]);
  });

  it('have no blanks at their end', () => {
    expect(
      columns(
        [
          ['a', ''],
          ['bb', ''],
        ],
        { width: 80, indent: 0, cut: 0 },
      ),
    ).toEqual(['a', 'bb']);
  });
});
