import { expect, test } from 'vitest';
import { type Recorded, recordText, undoText } from '../../../src/report/terminal/record.ts';
import { widthOf } from '../../../src/report/terminal/width.ts';
import { changesOf } from '../../../src/write/changes.ts';
import { agenda, day } from '../../rooms.ts';
import { FORBIDDEN } from '../hostile.ts';

const HEAD = 'pair: LW-1\nspecies: lavender waxbill\nhousing: flight 2\nlog:\n';
const LAID =
  HEAD + ['2026-03-01', '2026-03-02', '2026-03-03'].map((date) => `  - {date: ${date}, laid: 1}\n`).join('');
const SAT = `${LAID}  - {date: 2026-03-04, laid: 1, sitting}\n`;

function told(before: string, after: string, on: string, more: Partial<Recorded> = {}): Recorded {
  const morning = (text: string) => ({ items: agenda({ 'LW-1': text }, on, 400), warnings: [] });
  return {
    day: day(on),
    what: 'written',
    plan: { path: 'pairs/LW-1.yaml', line: 8, lines: ['    - date: 2026-03-04', '      sitting:'] },
    changes: changesOf(morning(before), morning(after)),
    verdict: { unreadable: [], errors: [], hints: [] },
    sources: new Map(),
    typed: () => null,
    ...more,
  };
}

const PAGE = { width: 80, color: false };

test('the entry stands as it is in the file, but for the indent', () => {
  expect(recordText(told(LAID, LAID, '2026-03-04'), PAGE)).toBe(
    'Written to pairs/LW-1.yaml, line 8:\n  - date: 2026-03-04\n    sitting:\n\nNothing changes in the agenda.\n',
  );
});

test('what moved is told with the days before', () => {
  const text = recordText(told(LAID, SAT, '2026-03-04'), PAGE);
  expect(text).toMatch(/\n {2}moved {2}hatching expected, LW-1: .*, was /);
});

test('of many tasks the first few are told', () => {
  const hatched = `${SAT}  - {date: 2026-03-16, hatched: 2}\n`;
  const text = recordText(told(SAT, hatched, '2026-03-16'), PAGE);
  expect(text.match(/^ {2}new /gm)).toHaveLength(6);
  expect(text).toMatch(/^ {9}and \d+ more$/m);
});

test('no line is wider than the page, none holds what a terminal obeys', () => {
  const hatched = `${SAT}  - {date: 2026-03-16, hatched: 2}\n`;
  const plan = { path: 'pairs/\u001b[2J.yaml', line: 1, lines: ['- {date: 2026-03-16, note: "\u202e"}'] };
  const text = recordText(told(SAT, hatched, '2026-03-16', { plan }), { width: 40, color: false });
  expect(text).not.toMatch(FORBIDDEN);
  for (const line of text.split('\n').slice(3)) expect(widthOf(line)).toBeLessThanOrEqual(40);
});

test('what is refused says what speaks against it, and the way out if there is one', () => {
  const at = { file: 'pairs/LW-1.yaml', line: 8, column: 1, length: 1 };
  const error = { code: 'impossible' as const, at, args: { who: 'e2', did: 'hatched', why: 'it was lost' } };
  const refused = {
    what: 'refused' as const,
    verdict: { unreadable: [], errors: [error, error], hints: [] },
  };
  const text = recordText(told(LAID, LAID, '2026-03-04', refused), PAGE);
  expect(text).toMatch(
    /^nestlog: nothing was written to pairs\/LW-1\.yaml: 2 things in the record speak\n?\s*against it\./,
  );
  expect(text).toContain('e2 cannot be hatched: it was lost');
  expect(text).toContain('--anyway');
  const unreadable = { what: 'refused' as const, verdict: { unreadable: [error], errors: [], hints: [] } };
  expect(recordText(told(LAID, LAID, '2026-03-04', unreadable), PAGE)).not.toContain('--anyway');
});

test('what is taken back is shown', () => {
  expect(
    undoText({ path: 'pairs/LW-1.yaml', inserted: '\r\n  - {date: 2026-03-04, sitting}', done: true }),
  ).toBe('Taken back; pairs/LW-1.yaml is as it was before:\n  - {date: 2026-03-04, sitting}\n');
});
