import { expect, test } from 'vitest';
import { recordJson } from '../../../src/report/json/record.ts';
import { day } from '../../rooms.ts';

test('an entry as data has the same keys, whatever became of it', () => {
  const at = { file: 'pairs/LW-1.yaml', line: 8, column: 3, length: 1 };
  const plan = { path: at.file, line: 8, lines: ['  - {date: 2026-03-04, hatched: e2}'] };
  const error = { code: 'impossible' as const, at, args: { who: 'e2', did: 'hatched', why: 'it was lost' } };
  const rest = {
    day: day('2026-03-04'),
    plan,
    changes: { warnings: [], gone: [], begun: [], moved: [] },
    sources: new Map(),
    typed: () => null,
  };
  const keys = (what: 'written' | 'refused') =>
    JSON.parse(recordJson({ ...rest, what, verdict: { unreadable: [], errors: [error], hints: [] } }));
  expect(keys('refused')).toMatchObject({
    nestlog: 1,
    written: false,
    refused: true,
    line: 8,
    lines: plan.lines,
  });
  expect(keys('written')).toMatchObject({ written: true, refused: false });
  expect(keys('refused').findings).toMatchObject([{ code: 'impossible', line: 8, column: 3 }]);
});
