import { expect, test } from 'vitest';
import { byPlace, type Finding } from '../../src/findings/finding.ts';

const at = (file: string, line: number, column: number): Finding => ({
  code: 'no-date',
  at: { file, line, column, length: 1 },
  args: {},
});

test('findings stand in the order in which a keeper mends them: file, line, column', () => {
  const sorted = [
    at('pairs/LW-10.yaml', 1, 1),
    at('pairs/LW-2.yaml', 9, 1),
    at('pairs/LW-2.yaml', 3, 8),
    at('pairs/LW-2.yaml', 3, 2),
  ].sort(byPlace);
  expect(sorted.map(({ at: { file, line, column } }) => `${file}:${line}:${column}`)).toEqual([
    'pairs/LW-2.yaml:3:2',
    'pairs/LW-2.yaml:3:8',
    'pairs/LW-2.yaml:9:1',
    'pairs/LW-10.yaml:1:1',
  ]);
});
