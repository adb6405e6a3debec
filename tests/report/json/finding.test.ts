import { expect, test } from 'vitest';
import { codes } from '../../../src/findings/codes.ts';
import { findingData } from '../../../src/report/json/finding.ts';

const args = { name: 'owl finsh', suggestion: 'owl finch' };

test('a finding for programs has place, level, words and fix', () => {
  const at = { file: 'pairs/of-1.yaml', line: 2, column: 10, length: 9 };
  expect(findingData({ code: 'unknown-species', at, args })).toStrictEqual({
    code: 'unknown-species',
    level: 'hint',
    file: 'pairs/of-1.yaml',
    line: 2,
    column: 10,
    text: codes['unknown-species'].text(args),
    hint: codes['unknown-species'].hint(args),
  });
});
