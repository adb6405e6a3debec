import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { codes } from '../../../src/findings/codes.ts';
import type { Finding } from '../../../src/findings/finding.ts';
import { findingsSummary, findingsText } from '../../../src/report/terminal/findings.ts';
import { styles } from '../../../src/report/terminal/style.ts';
import { widthOf } from '../../../src/report/terminal/width.ts';
import { FORBIDDEN, hostileText, withoutColour } from '../hostile.ts';

const plain = styles(false);
/** How the errors of these tests are worded is not what they are about. */
const words = codes['negative-count'].text({ text: '-1' });

function finding(line: number, over: Partial<Finding> = {}): Finding {
  return {
    code: 'negative-count',
    at: { file: 'pairs/lw-1.yaml', line, column: 29, length: 2 },
    args: { text: '-1' },
    ...over,
  };
}

const hint = (line: number) =>
  finding(line, { code: 'unknown-species', args: { name: 'owl finsh', suggestion: 'owl finch' } });

function text(findings: Finding[], source = '', over: { width?: number; perFile?: number } = {}): string {
  const sources = new Map([['pairs/lw-1.yaml', source]]);
  return findingsText(findings, { sources, width: 80, styles: plain, perFile: 20, ...over });
}

test('place, level and words stand at the margin; line, marker and fix behind blanks', () => {
  expect(text([hint(2)], 'pair: OF-1\nspecies: owl finsh\n').replace(/:29/, ':10')).toBe(
    [
      'pairs/lw-1.yaml:2:10: hint: no profile for the species `owl finsh`, so no dates',
      '  can be expected',
      '  2 | species: owl finsh',
      '    |                   ^',
      '  fix: did you mean `owl finch`? If it is another bird, the few numbers you know',
      '       go into species/owl-finsh.yaml: `species: owl finsh`, and below it such',
      '       as `incubation: 12-14`',
      '',
    ].join('\n'),
  );
});

test('without a source line the words stand alone', () => {
  expect(text([finding(7)])).toMatch(/^pairs\/lw-1\.yaml:7:29: error: -1 .*\n {2}fix: /);
});

test.each(['\n', '\r\n', '\r'])('lines end with %j', (end) => {
  const source = ['pair: LW-1', 'log:', '  - {date: 2026-03-10, laid: -1}', ''].join(end);
  expect(
    text([finding(3, { at: { file: 'pairs/lw-1.yaml', line: 3, column: 30, length: 2 } })], source),
  ).toContain('\n  3 |   - {date: 2026-03-10, laid: -1}\n    |                              ^^\n');
});

test('findings come by file, line and column, whatever order they were found in', () => {
  const at = (file: string, line: number, column: number) =>
    finding(1, { at: { file, line, column, length: 1 } });
  const places = ['birds.yaml:3:1:', 'pairs/a.yaml:2:9:', 'pairs/a.yaml:10:2:', 'pairs/a.yaml:10:5:'];
  const found = [
    at('pairs/a.yaml', 10, 5),
    at('birds.yaml', 3, 1),
    at('pairs/a.yaml', 10, 2),
    at('pairs/a.yaml', 2, 9),
  ];
  expect(text(found).match(/^\S+/gm)).toEqual(places);
});

describe('a file with too many findings', () => {
  const many = [...Array.from({ length: 5 }, (_, index) => hint(index + 1)), finding(8), finding(9)];

  test('shows its errors before its hints, in the order of the lines, and says how many are left', () => {
    const shown = text(many, '', { perFile: 3 });
    expect(shown.match(/yaml:\d+/g)).toEqual(['yaml:1', 'yaml:8', 'yaml:9']);
    expect(shown).toMatch(/^pairs\/lw-1\.yaml: and 4 more$/m);
  });

  test('says nothing of more when all are shown', () => {
    expect(text(many, '', { perFile: 7 })).not.toContain('more');
  });
});

describe('above the morning', () => {
  test('there is nothing without errors: hints can wait', () => {
    expect(findingsSummary([hint(1)], 80, plain)).toEqual([]);
  });

  test('up to three errors take a line each', () => {
    expect(findingsSummary([finding(4), hint(2), finding(3)], 80, plain)).toEqual([
      '2 errors in the journals, so something may be missing here:',
      `  pairs/lw-1.yaml:3:29: ${words}`,
      `  pairs/lw-1.yaml:4:29: ${words}`,
      '  nestlog check shows the lines and how to mend them',
    ]);
  });

  test('more than three are counted, and check is named', () => {
    const lines = findingsSummary(
      [1, 2, 3, 4, 5].map((line) => finding(line)),
      80,
      plain,
    );
    expect(lines).toHaveLength(5);
    expect(lines.at(-1)).toBe('  nestlog check shows all 5');
  });

  test('of errors in several files each file has a line with how many there are, those with most', () => {
    const at = (file: string, line: number) => finding(1, { at: { file, line, column: 29, length: 2 } });
    const lines = findingsSummary(
      [
        at('birds.yaml', 3),
        at('nestlog.yaml', 2),
        ...[8, 9, 10].map((line) => at('pairs/LW-1.yaml', line)),
        ...[5, 6].map((line) => at('pairs/LW-2.yaml', line)),
      ],
      80,
      plain,
    );
    expect(lines).toEqual([
      '7 errors in the journals, so something may be missing here:',
      `  birds.yaml:3:29: ${words}`,
      `  pairs/LW-1.yaml:8:29 and 2 more: ${words}`,
      `  pairs/LW-2.yaml:5:29 and 1 more: ${words}`,
      '  nestlog check shows all 7, in 4 files',
    ]);
  });

  test('a long one is cut to its line', () => {
    const [, line = ''] = findingsSummary([finding(3, { args: { text: 'x'.repeat(99) } })], 70, plain);
    expect(widthOf(line)).toBe(70);
    expect(line).toMatch(/…$/);
  });
});

test('a value of a thousand characters is cut in the words', () => {
  expect(text([finding(1, { args: { text: 'x'.repeat(1000) } })])).toMatch(/error: \S* ?\n? *x{30,99}…/);
});

test('what is to be pasted is never broken and keeps its shape', () => {
  const line = `  - {date: 2026-03-10, laid: 1, note: "${'sat well, '.repeat(12)}"}`;
  const shown = text([finding(1, { code: 'unquoted-note', args: { line } })]);
  expect(shown).toContain(`\n  fix:\n  ${line.trim()}\n`);
  const log = text([finding(1, { code: 'no-log', args: {} })]);
  expect(log).toMatch(/\n {2}log:\n {2,4}- \{date: /);
});

test('hostile journals and file names reach no terminal, and only the place may be wider than the line', () => {
  fc.assert(
    fc.property(
      hostileText,
      hostileText,
      fc.boolean(),
      fc.integer({ min: 40, max: 120 }),
      (source, name, color, width) => {
        const file = `pairs/${name}.yaml`;
        const at = { file, line: 1, column: 3, length: 4 };
        const findings = [
          finding(1, { at, args: { text: source } }),
          { ...hint(1), at, args: { name: source, suggestion: source } },
        ];
        const look = { sources: new Map([[file, source]]), width, styles: styles(color), perFile: 9 };
        const shown =
          findingsText(findings, look) + findingsSummary(findings, width, styles(color)).join('\n');
        expect(withoutColour(shown)).not.toMatch(FORBIDDEN);
        for (const line of withoutColour(shown)
          .split('\n')
          .filter((line) => line.startsWith(' '))) {
          expect(widthOf(line)).toBeLessThanOrEqual(width);
        }
      },
    ),
  );
});

test('a line that mends two findings of an entry is printed once', () => {
  const line = '- {date: 2026-03-04, lost: {clear: [e1, e3]}, weighed: {c1: 4.5}}';
  const rest = (column: number, args: Finding['args']) =>
    finding(2, { code: 'comma-in-map', at: { file: 'pairs/lw-1.yaml', line: 2, column, length: 1 }, args });
  const said = text([rest(40, { key: 'e3', line }), rest(60, { key: '5', line })]);
  expect(said.split(line)).toHaveLength(2);
  expect(said).toContain('  fix: the line above mends this too\n');
  const other = text([rest(40, { key: 'e3', line }), rest(60, { key: '5', line: '- {date: 2026-03-04}' })]);
  expect(other).not.toContain('mends this too');
  const general = text([rest(40, { key: 'e3' }), rest(60, { key: '5' })]);
  expect(general).not.toContain('mends this too');
});
