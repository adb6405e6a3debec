import { expect, test } from 'vitest';
import type { ImportOutcome } from '../../../src/report/import.ts';
import { importText } from '../../../src/report/terminal/import.ts';
import { widthOf } from '../../../src/report/terminal/width.ts';
import { FORBIDDEN } from '../hostile.ts';

const options = { width: 60, color: false, most: 2 };

const outcome: ImportOutcome = {
  table: 'old.csv',
  rows: 4,
  skipped: 1,
  journals: [
    {
      pair: 'A-1',
      path: 'pairs/A-1.yaml',
      text: `pair: A-1\nlog:\n${'  - {date: 2024-03-04, laid: 1}\n'.repeat(14)}`,
      entries: 14,
      assumed: 3,
    },
  ],
  dates: { order: 'day-first', because: 'row 4, Laid: 31/05/2024 can be nothing else' },
  unread: ['moon'],
  zeros: new Map([['hatched', 2]]),
  hints: [
    { row: 3, text: 'no profile for the species `grey phoenix`', times: 2 },
    { row: null, text: 'something else', times: 1 },
  ],
  problems: [],
  written: false,
};

test('what would be written, how it was read and what was left out', () => {
  expect(importText(outcome, options)).toBe(`old.csv: 4 rows, 1 journal, 14 entries
  left out as the mapping says: 1 row
  dates are read day-first (row 4, Laid: 31/05/2024 can be
    nothing else)
  dates counted from other dates, which their notes say: 3
  not written, as the table says 0: hatched in 2 rows
  columns that are not read: moon
  hint: no profile for the species \`grey phoenix\` (2 times,
    first in row 3)
  hint: something else

pairs/A-1.yaml:
  pair: A-1
  log:
${'    - {date: 2024-03-04, laid: 1}\n'.repeat(12)}  and 2 lines more

Nothing is written yet: without --dry-run it will be.
`);
});

test('problems go first and alone, the first of them by file, row and column', () => {
  const problems = [
    {
      file: 'old.csv',
      row: 2,
      line: null,
      column: 'Laid',
      text: '`spring` is no date',
      hint: 'write YYYY-MM-DD',
    },
    { file: 'map.yaml', row: null, line: 4, column: null, text: 'there is no key `laide` here', hint: null },
    { file: 'old.csv', row: null, line: null, column: null, text: 'no row', hint: null },
  ];
  expect(
    importText({ ...outcome, problems }, options),
  ).toBe(`old.csv row 2, Laid: error: \`spring\` is no date
  fix: write YYYY-MM-DD

map.yaml line 4: error: there is no key \`laide\` here

and 1 more; --all shows them

3 problems, so nothing is written.
`);
});

test('what stands in a table cannot command the terminal, and lines stay in the width', () => {
  const evil = '\u001b[2J\u202eevil\u0007 ';
  const problems = [
    {
      file: `${evil}.csv`,
      row: 2,
      line: null,
      column: evil,
      text: `${evil.repeat(20)} is no date`,
      hint: evil.repeat(9),
    },
  ];
  const said = importText({ ...outcome, problems }, options);
  const summary = importText({ ...outcome, table: evil, unread: [evil.repeat(20)] }, options);
  for (const text of [said, summary]) {
    expect(text).not.toMatch(FORBIDDEN);
    for (const line of text.split('\n')) expect(widthOf(line)).toBeLessThanOrEqual(60);
  }
});
