import { expect, test } from 'vitest';
import { checkJson } from '../../../src/report/json/check.ts';
import { findingData } from '../../../src/report/json/finding.ts';
import { day } from '../mornings.ts';

const finding = {
  code: 'negative-count',
  at: { file: 'pairs/lw-1.yaml', line: 3, column: 5, length: 2 },
  args: { text: '-1' },
} as const;

test('what check found, for programs: the day, the room and every finding', () => {
  expect(JSON.parse(checkJson(day('2026-05-17'), 'the finch room', [finding, finding]))).toStrictEqual({
    nestlog: 1,
    date: '2026-05-17',
    room: 'the finch room',
    findings: [findingData(finding), findingData(finding)],
  });
});

test('a clean room without a name', () => {
  expect(JSON.parse(checkJson(day('2026-05-17'), null, []))).toStrictEqual({
    nestlog: 1,
    date: '2026-05-17',
    room: null,
    findings: [],
  });
});
