import { describe, expect, test } from 'vitest';
import type { Target } from '../../src/write/plan.ts';
import { planned } from './planned.ts';

const LAID = '{date: 2026-03-04, laid: 1}';
const BLOCK = 'date: 2026-03-04';

/** The text with the new part between `«` and `»`. */
function added(text: string, words = ['laid=1'], target?: Target): string | null {
  const plan = planned(text, words, target);
  if (plan === null) return null;
  const { before, at, inserted } = plan;
  return `${before.slice(0, at)}«${inserted}»${before.slice(at)}`;
}

describe('the new entry follows the style of the last one', () => {
  test.each([
    ['a line each', 'pair: A\nlog:\n  - {date: 2026-03-01, paired}\n', `«  - ${LAID}\n»`],
    ['no indent', 'pair: A\nlog:\n- {date: 2026-03-01, paired}\n', `«- ${LAID}\n»`],
    ['a wide indent', 'pair: A\nlog:\n     -  {date: 2026-03-01, paired}\n', `«     -  ${LAID}\n»`],
    ['a key a line', 'pair: A\nlog:\n  - date: 2026-03-01\n    paired:\n', `«  - ${BLOCK}\n    laid: 1\n»`],
    [
      'a dash of its own',
      'pair: A\nlog:\n  -\n    date: 2026-03-01\n    paired:\n',
      `«  - ${BLOCK}\n    laid: 1\n»`,
    ],
    ['line ends of Windows', 'pair: A\r\nlog:\r\n  - {date: 2026-03-01, paired}\r\n', `«  - ${LAID}\r\n»`],
    [
      'a key a line, of Windows',
      'pair: A\r\nlog:\r\n- date: 2026-03-01\r\n  paired:\r\n',
      `«- ${BLOCK}\r\n  laid: 1\r\n»`,
    ],
    ['line ends of old Macs', 'pair: A\rlog:\r  - {date: 2026-03-01, paired}\r', `«  - ${LAID}\r»`],
    ['no last line end', 'pair: A\nlog:\n  - {date: 2026-03-01, paired}', `«\n  - ${LAID}»`],
    ['no last line end, Windows', 'pair: A\r\nlog:\r\n  - {date: 2026-03-01, paired}', `«\r\n  - ${LAID}»`],
    ['a tab', 'pair: A\nlog:\n\t- {date: 2026-03-01, paired}\n', `«\t- ${LAID}\n»`],
  ])('%s', (_, text, expected) => {
    expect(added(text)).toBe(`${text}${expected}`);
  });
});

describe('the log need not be the end of the file, nor have an entry', () => {
  test.each([
    ['a key behind it', 'pair: A\nlog:\n  - {date: 2026-03-01, paired}\n', '\n# where\nhousing: cage 1\n'],
    ['comments of its own', 'pair: A\nlog:\n  - {date: 2026-03-01, paired}\n\n  # 2026\n', ''],
    ['comments of the file', 'pair: A\nlog:\n  - {date: 2026-03-01, paired}\n', '\n# the end\n'],
    ['empty', 'pair: A\nlog:\n', 'housing: cage 1\n'],
    ['empty, with a comment', 'pair: A\nlog: # what I saw\n  # one line a visit\n', ''],
    ['an end mark', 'pair: A\nlog:\n  - {date: 2026-03-01, paired}\n', '...\n'],
    [
      'a note of several lines',
      'pair: A\nlog:\n  - {date: 2026-03-01, note: "a\n     b"}\n',
      'housing: cage 1\n',
    ],
    [
      'an unreadable entry',
      'pair: A\nlog:\n  - {date: 2026-03-01, paired}\n  - {date: 2026-03-02, [}\n',
      '# the end\n',
    ],
    ['a byte order mark', '\ufeffpair: A\nlog:\n  - {date: 2026-03-01, paired}\n', ''],
  ])('%s', (_, before, behind) => {
    expect(added(before + behind)).toBe(`${before}«  - ${LAID}\n»${behind}`);
  });

  test('none at all', () => {
    expect(added('pair: A\nhousing: cage 1\n')).toBe(`pair: A\nhousing: cage 1\n«log:\n  - ${LAID}\n»`);
    expect(added('pair: A')).toBe(`pair: A«\nlog:\n  - ${LAID}»`);
  });

  test('a note that keeps its blank lines keeps them', () => {
    const text = 'pair: A\nlog:\n  - date: 2026-03-01\n    note: |+\n      # no comment\n\n\n';
    expect(added(text)).toBe(`${text}«  - ${BLOCK}\n    laid: 1\n»`);
  });
});

describe('a log in brackets gets its entry inside', () => {
  test.each([
    ['pair: A\nlog: []\n', `pair: A\nlog: [«${LAID}»]\n`],
    [
      'pair: A\nlog: [{date: 2026-03-01, paired}]\n',
      `pair: A\nlog: [{date: 2026-03-01, paired}«, ${LAID}»]\n`,
    ],
    [
      'pair: A\nlog: [\n  {date: 2026-03-01, paired}, # a\n]\n',
      `pair: A\nlog: [\n  {date: 2026-03-01, paired},«\n  ${LAID}» # a\n]\n`,
    ],
    ['{pair: A, log: []}\n', `{pair: A, log: [«${LAID}»]}\n`],
    ['{pair: A}\n', `{pair: A«, log: [${LAID}]»}\n`],
  ])('%j', (text, expected) => {
    expect(added(text)).toBe(expected);
  });
});

describe('a bird of the list', () => {
  const weigh = (text: string) => added(text, ['weighed=8.4'], { of: 'bird', id: 'B' });
  const entry = '{date: 2026-03-04, weighed: 8.4}';
  test.each([
    [
      'birds:\n  - id: A\n  - id: B\n    log:\n      - {date: 2026-03-01, weighed: 8}\n',
      `«      - ${entry}\n»`,
      '\n  # others\n  - id: C\n    log:\n      - {date: 2026-03-01, weighed: 9}\n',
    ],
    ['birds:\n  - id: A\n  - id: B\n    sex: hen\n', `«    log:\n      - ${entry}\n»`, '\n  - id: C\n'],
    ['birds:\n- id: B\n', `«  log:\n    - ${entry}\n»`, '- id: C\n'],
    ['birds:\n  - {id: A}\n  - {id: B, sex: hen', `«, log: [${entry}]»`, '}\n  - {id: C}\n'],
    ['birds:\n  - {id: B, log: [{date: 2026-03-01, weighed: 8}', `«, ${entry}»`, ']}\n'],
    ['birds:\n  - is: B\n    log:\n', `«      - ${entry}\n»`, '  - id: C\n'],
  ])('%j', (before, inserted, behind) => {
    expect(weigh(before + behind)).toBe(before + inserted + behind);
  });
});

test('an empty observation of a log with a key a line has its colon', () => {
  const text = 'pair: A\nlog:\n  - date: 2026-03-01\n    paired:\n';
  expect(added(text, ['sitting', 'note=a: b'])).toBe(
    `${text}«  - ${BLOCK}\n    sitting:\n    note: "a: b"\n»`,
  );
});

describe('a log under a key that is read as `log`', () => {
  test('takes the entry, and no second one is begun', () => {
    const text = 'Pair: A\nDiary:\n  - {date: 2026-03-01, paired}\n';
    expect(added(text)).toBe(`${text}«  - ${LAID}\n»`);
  });

  test('of a bird takes it as well', () => {
    const text = 'Birds:\n  - Name: X1\n    Log:\n      - {date: 2026-03-01, arrived}\n';
    expect(added(text, ['moved=flight 2'], { of: 'bird', id: 'X1' })).toBe(
      `${text}«      - {date: 2026-03-04, moved: flight 2}\n»`,
    );
  });
});
