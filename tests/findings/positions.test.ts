import { describe, expect, test } from 'vitest';
import { kindOf } from '../../src/findings/codes.ts';
import type { Place } from '../../src/findings/finding.ts';
import { readRoom } from '../../src/journal/record.ts';
import { day } from '../rooms.ts';

const clock = { day: day('2026-06-01'), today: day('2026-06-01') };

/** A file in which « and » stand around the place of its one finding, as text without them and as that place. */
function marked(file: string, text: string): { text: string; place: Place } {
  const [before = '', inside = '', after = ''] = text.split(/[«»]/);
  const lines = before.split(/\r\n|\r|\n/);
  const column = [...(lines.at(-1) as string).replace('\uFEFF', '')].length + 1;
  return {
    text: before + inside + after,
    place: { file, line: lines.length, column, length: [...inside].length },
  };
}

/** Asserts that reading the file finds this once, at the marked place, and no other error. */
function expectPlace(file: string, text: string, code: string): void {
  const source = marked(file, text);
  const { findings } = readRoom([{ path: file, text: source.text }], clock);
  const errors = findings.filter((finding) => kindOf(finding).level === 'error');
  expect(errors.map((finding) => [finding.code, finding.at])).toEqual([[code, source.place]]);
}

const journal = (entry: string) => `pair: LW-1\nspecies: lavender waxbill\nlog:\n${entry}\n`;

describe('a finding points at the very value', () => {
  test.each([
    ['in a flow entry', '  - {date: 2026-03-01, laid: «-1»}', 'negative-count'],
    ['in a block entry', '  - date: 2026-03-01\n    laid: «-1»\n    note: "x"', 'negative-count'],
    ['in a list', '  - {date: 2026-03-01, candled: {fertile: [e1, «2»]}}', 'not-a-ref'],
    [
      'behind a quoted note with an escape',
      '  - {note: "\\u0041 \\"b\\"", date: 2026-03-01, laid: «-1»}',
      'negative-count',
    ],
    [
      'behind wide characters, which count as one',
      '  - {note: "巣箱", date: 2026-03-01, laid: «-1»}',
      'negative-count',
    ],
    [
      'behind characters of two UTF-16 units',
      '  - {note: "🐤🐤", date: 2026-03-01, laid: «-1»}',
      'negative-count',
    ],
    [
      'behind a combining mark, which counts',
      '  - {note: "e\u0301", date: 2026-03-01, laid: «-1»}',
      'negative-count',
    ],
    ['on a key', '  - {date: 2026-03-01, «candeld»: 2}', 'unknown-key'],
    ['on a date', '  - {date: «2026-02-30», laid: 1}', 'impossible-date'],
  ])('%s', (_, entry, code) => {
    expectPlace('pairs/lw-1.yaml', journal(entry), code);
  });

  test.each([
    ['CR LF', '\r\n'],
    ['CR', '\r'],
  ])('with lines that end in %s', (_, end) => {
    expectPlace(
      'pairs/lw-1.yaml',
      journal('  - {date: 2026-03-01, laid: «-1»}').replaceAll('\n', end),
      'negative-count',
    );
  });

  test('in a file that begins with a byte order mark', () => {
    expectPlace(
      'pairs/lw-1.yaml',
      `\uFEFF«pairr»: LW-1\n${journal('  - {date: 2026-03-01, laid: 1}')}`,
      'unknown-key',
    );
  });

  test('in an entry that stands after one that cannot be read', () => {
    const text = journal('  - {date: 2026-03-01, laid: [e1}\n  - {date: 2026-03-02, laid: «-1»}');
    const source = marked('pairs/lw-1.yaml', text);
    const { findings } = readRoom([{ path: 'pairs/lw-1.yaml', text: source.text }], clock);
    expect(findings.find(({ code }) => code === 'negative-count')?.at).toEqual(source.place);
    expect(findings[0]?.at.line).toBe(4);
  });
});
