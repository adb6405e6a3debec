import { expect, test } from 'vitest';
import type { Finding } from '../../../src/findings/finding.ts';
import { checkText } from '../../../src/report/terminal/check.ts';

const look = { width: 80, color: false, perFile: 20 };
const read = { room: 'the finch room', sources: new Map<string, string>(), pairs: 12, entries: 431 };

function found(code: 'negative-count' | 'unknown-species', file: string): Finding {
  return {
    code,
    at: { file, line: 1, column: 1, length: 1 },
    args: { text: '-1', name: 'owl finsh', suggestion: '' },
  };
}

test('a clean room is told kindly, with what was read', () => {
  expect(checkText({ ...read, findings: [] }, look)).toBe(
    'All is well: 12 pairs and 431 entries of the finch room read, and nothing to mend.\n'.replace(
      ' mend',
      '\nmend',
    ),
  );
  expect(checkText({ ...read, room: null, pairs: 1, entries: 1, findings: [] }, look)).toBe(
    'All is well: 1 pair and 1 entry read, and nothing to mend.\n',
  );
});

test('the last line counts errors, hints and files, and what was read all the same', () => {
  const findings = [
    found('negative-count', 'pairs/a.yaml'),
    found('negative-count', 'pairs/a.yaml'),
    found('unknown-species', 'pairs/b.yaml'),
  ];
  expect(checkText({ ...read, findings }, { ...look, width: 100 })).toMatch(
    /\n\n2 errors and 1 hint in 2 files\. All else counts: 12 pairs and 431 entries were read\.\n$/,
  );
  expect(checkText({ ...read, findings: findings.slice(2) }, look)).toMatch(/\n\n1 hint in 1 file\. /);
});

test('a name that would clear the screen does not', () => {
  expect(checkText({ ...read, room: '\u001B[2J', findings: [] }, look)).toContain('<ESC>[2J');
});
