import { expect, test } from 'vitest';
import { importJson } from '../../../src/report/json/import.ts';

test('every problem has all of its keys, null where nothing is known', () => {
  const problem = { file: 'map.yaml', row: null, line: 4, column: null, text: 'no date', hint: null };
  const text = importJson({
    table: 'old.csv',
    rows: 2,
    skipped: 1,
    journals: [{ pair: 'A-1', path: 'pairs/A-1.yaml', text: 'pair: A-1\n', entries: 3, assumed: 1 }],
    dates: { order: 'day-first', because: 'as the mapping says' },
    unread: ['moon'],
    zeros: new Map([['hatched', 2]]),
    hints: [{ row: 2, text: 'no profile', times: 1 }],
    problems: [problem],
    written: false,
  });
  expect(JSON.parse(text)).toEqual({
    nestlog: 1,
    table: 'old.csv',
    written: false,
    rows: 2,
    skipped: 1,
    dates: { order: 'day-first', because: 'as the mapping says' },
    unread: ['moon'],
    zeros: { hatched: 2 },
    journals: [{ pair: 'A-1', path: 'pairs/A-1.yaml', entries: 3, assumed: 1 }],
    hints: [{ row: 2, text: 'no profile', times: 1 }],
    problems: [problem],
  });
});
