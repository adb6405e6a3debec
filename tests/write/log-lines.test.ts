import { expect, test } from 'vitest';
import { dashOf, endsOfList, lineEndAt, linesOf } from '../../src/write/log-lines.ts';
import { dedent } from '../rooms.ts';

/** The lines behind which an item of the first `log:` can stand, best first; its dashes stand so far in. */
function ends(source: string, indent = 2): string[] {
  const text = dedent(source);
  const lines = linesOf(text);
  const head = lines.findIndex(({ from, to }) => text.slice(from, to).trim().startsWith('log:'));
  const margin = lines[head]?.indent ?? 0;
  return endsOfList(text, lines, { head, margin, dash: margin + indent }).map((end) =>
    text.slice(lines[end]?.from, lines[end]?.to).trim(),
  );
}

test('lines end as they do, whatever the system that wrote them', () => {
  expect(linesOf('a\r\nb\n\rc').map(({ from, to, next }) => [from, to, next])).toEqual([
    [0, 1, 3],
    [3, 4, 5],
    [5, 5, 6],
    [6, 7, 7],
  ]);
  expect(linesOf('a\n')).toHaveLength(1);
});

test('the best place is behind the last item', () => {
  expect(ends('log:\n  - {a: 1}\n  - {b: 2}\nhousing: cage 1\n')[0]).toBe('- {b: 2}');
});

test('comments that are indented as the items belong to them, others to what follows', () => {
  expect(ends('log:\n  - {a: 1}\n  # 2027\n')[0]).toBe('# 2027');
  expect(ends('log:\n  - {a: 1}\n\n  # 2027\n')[0]).toBe('# 2027');
  expect(ends('log:\n  - {a: 1}\n# where they live\nhousing: cage 1\n')[0]).toBe('- {a: 1}');
});

test('a list that is indented no more than its key ends with the next key', () => {
  expect(ends('log:\n- {a: 1}\n- {b: 2}\nhousing: cage 1\n', 0)[0]).toBe('- {b: 2}');
  expect(ends('log:\n- {a: 1}\n# where they live\nhousing: cage 1\n', 0)[0]).toBe('- {a: 1}');
});

test('an item of several lines is one', () => {
  expect(ends('log:\n  - a: 1\n    note: |\n      # no comment\n\nhousing: cage 1\n')).toEqual([
    '# no comment',
    'note: |',
    '',
  ]);
});

test('nothing is put between the marks of a conflict', () => {
  const text = 'log:\n  - {a: 1}\n<<<<<<< ours\n  - {b: 2}\n=======\n  - {c: 3}\n>>>>>>> theirs\n';
  expect(ends(text)[0]).toBe('>>>>>>> theirs');
});

test('an empty log begins behind its key', () => {
  expect(ends('log:\nhousing: cage 1\n')[0]).toBe('log:');
});

test('a dash is found on its line or above it, with its blanks', () => {
  const text = '  -   a: 1\n-\n  b: 2\n';
  const lines = linesOf(text);
  expect(dashOf(text, lines, 0)).toEqual({ before: '  ', behind: '   ' });
  expect(dashOf(text, lines, 2)).toEqual({ before: '', behind: ' ' });
  expect(dashOf('a: 1', linesOf('a: 1'), 0)).toBeNull();
});

test('a line without an end takes that of the first', () => {
  const text = 'a\r\nb';
  expect(lineEndAt(text, linesOf(text), 1)).toBe('\r\n');
  expect(lineEndAt('a', linesOf('a'), 0)).toBe('\n');
});
