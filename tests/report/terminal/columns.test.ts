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

  it('keep their columns however many they are', () => {
    const birds = Array.from({ length: 2500 }, (_, bird) => [
      `LW-${bird}`,
      bird === 7 ? 'quarantine cage' : 'a',
      '0',
    ]);
    const lines = columns([['bird', 'where', 'F'], ...birds], { width: 80, indent: 0, right: [2], cut: 1 });
    expect(lines).toHaveLength(2501);
    expect(new Set(lines.map((line) => line.lastIndexOf('  ')))).toEqual(new Set([24]));
    expect([lines[0], lines[8], lines[1000], lines[2500]]).toEqual([
      'bird     where            F',
      'LW-7     quarantine cage  0',
      'LW-999   a                0',
      'LW-2499  a                0',
    ]);
  });

  it('of no rows there is no line', () => {
    expect(columns([], { width: 80, indent: 0, cut: 0 })).toEqual([]);
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
