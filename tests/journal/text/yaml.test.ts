import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Fields, holdsRefused, List, Text } from '../../../src/journal/nodes.ts';
import { Lines } from '../../../src/journal/text/lines.ts';
import { parseYaml } from '../../../src/journal/text/yaml.ts';
import { read, readLog, seen } from '../reading.ts';

function parse(text: string) {
  const parsed = parseYaml(new Lines('a.yaml', text), { text, base: 0 });
  if ('trouble' in parsed) throw new Error(parsed.trouble.why);
  return parsed;
}

/** The text of each value of a mapping; null where it is no text. */
function values(text: string): (string | null)[] {
  const { root } = parse(text);
  return root instanceof Fields
    ? root.pairs.map(([, value]) => (value instanceof Text ? value.text : null))
    : [];
}

/**
 * YAML 1.2.2, chapter 10: the failsafe schema (10.1) makes every scalar text. The core schema (10.3) would make null of
 * `~` and `null`, numbers of `012` and `0o14`; YAML 1.1 made truth of `on` and `no`, and 5400 of `1:30`.
 */
describe('scalars are text, whatever they look like', () => {
  it.each([
    'on',
    'no',
    'yes',
    'off',
    'true',
    '~',
    'null',
    '012',
    '0o14',
    '014',
    '1:30',
    '1e3',
    '.inf',
    '2026-03-01',
    '1_000',
    '=',
  ])('%s stays itself', (text) => {
    expect(values(`key: ${text}`)).toEqual([text]);
    expect(values(`{key: ${text}, other: x}`)).toEqual([text, 'x']);
  });

  it('quotes are not part of them', () => {
    expect(values('a: "no"\nb: \'it\'\'s\'\nc: "\\u00e9\\n"')).toEqual(['no', "it's", 'é\n']);
  });

  it('only nothing is empty', () => {
    expect(values('{paired, nest: , note: ""}')).toEqual([null, null, '']);
    expect(values('paired:\nnest: # not yet\nnote: ""')).toEqual([null, null, '']);
  });
});

it('a long file is read to its last line, which may have no end; a line without end is not', () => {
  const long = `a: 1\n${`# ${'x'.repeat(98)}\n`.repeat(1100)}b: 2`;
  expect(values(long)).toEqual(['1', '2']);
  expect(() => values(`${long}${'x'.repeat(100_001)}`)).toThrow('too-long');
  expect(() => values(`\n${'x'.repeat(100_001)}`)).toThrow('too-long');
});

describe('keys of any name are only keys', () => {
  it.each(['__proto__', 'constructor', 'toString', 'hasOwnProperty'])('%s', (key) => {
    expect(read(`pair: LW-1\n${key}: {x: 1}\nlog:\n  - {date: 2026-02-01, ${key}: {x: 1}}\n`).found).toEqual([
      '2:1 unknown-key',
      '4:24 unknown-key',
    ]);
    expect(({} as Record<string, unknown>).x).toBeUndefined();
  });
});

describe('places', () => {
  it('are those of the value in its line, also behind a chick', () => {
    const text = 'pair: 🐣🐣 x\nlog:\n  - {date: 2026-03-01, ringed: {"🐣": [a, b]}}\n';
    const { root } = parse(text);
    const log = root instanceof Fields ? root.pairs[1]?.[1] : undefined;
    const entry = log instanceof List ? log.items[0] : undefined;
    const [key, ringed] = (entry instanceof Fields ? entry.pairs[1] : undefined) ?? [];
    expect(key?.at).toEqual({ file: 'a.yaml', line: 3, column: 24, length: 6 });
    const [chick, list] = (ringed instanceof Fields ? ringed.pairs[0] : undefined) ?? [];
    expect(chick?.at).toMatchObject({ column: 33, length: 3 });
    expect(list?.at).toMatchObject({ column: 38, length: 6 });
    expect(entry?.at).toMatchObject({ line: 3, column: 5, length: 41 });
  });

  it('of something empty are those of its key', () => {
    const { root } = parse('pair:\nhen: x');
    expect(root instanceof Fields && root.pairs[0]?.[1].at).toMatchObject({ line: 1, column: 1, length: 4 });
  });
});

describe('what journals do not use', () => {
  it.each([
    ['- {date: 2026-02-01, laid: &egg e1}', '3:30 yaml-feature'],
    ['- &first {date: 2026-02-01, laid: e1}', '3:5 yaml-feature'],
    ['- {date: 2026-02-01, laid: !!str e1}', '3:30 yaml-feature'],
    ['- {date: 2026-02-01, laid: !egg e1}', '3:30 yaml-feature'],
    ['- {date: 2026-02-01, laid: *egg}', '3:30 yaml-feature'],
    ['- {date: 2026-02-01, <<: {laid: e1}}', '3:24 yaml-feature'],
    ['- {date: 2026-02-01, laid: e1, laid: e2}', '3:34 duplicate-key'],
    ['- {date: 2026-02-01, lost: {clear: e1, clear: e2}}', '3:42 duplicate-key'],
    ['- {date: 2026-02-01, [a, b]: 1}', '3:24 bad-key'],
  ])('%s is one finding', (line, found) => {
    expect(readLog(line).found).toEqual([found]);
  });

  it.each([
    ['- {date: 2026-02-01, laid: &egg e1}', 'anchor', 30, 7],
    ['- {date: 2026-02-01, laid: !!str e1}', 'tag', 30, 8],
    ['- {date: 2026-02-01, laid: !egg e1}', 'tag', 30, 7],
    ['- {date: 2026-02-01, laid: *egg}', 'alias', 30, 4],
    ['- {date: 2026-02-01, <<: {laid: e1}}', 'merge key', 24, 2],
  ])('%s is named and pointed at as a whole', (line, feature, column, length) => {
    expect(readLog(line).findings).toMatchObject([{ at: { column, length }, args: { feature } }]);
  });

  it('is pointed at as a whole where it stands for nothing', () => {
    for (const [line, length] of [
      ['- {date: 2026-02-01, laid: &egg}', 4],
      ['- {date: 2026-02-01, laid: !!str, checked}', 5],
    ] as const)
      expect(readLog(line).findings.find(({ code }) => code === 'yaml-feature')).toMatchObject({
        at: { column: 30, length },
      });
  });

  it('does not lose what was typed beside it', () => {
    expect(seen(readLog('- {date: 2026-02-01, laid: &egg e1, hatched: *egg, sitting}').entries)).toHaveLength(
      2,
    );
    expect(seen(readLog('- {date: 2026-02-01, laid: 1, laid: 2}').entries)).toEqual([
      'laid {"kind":"count","count":1,"exact":"exactly"}',
    ]);
  });

  it('is refused wherever it hides in a value', () => {
    const { root } = parse('a: [x, {y: *z}]');
    expect(root !== null && holdsRefused(root)).toBe(true);
  });

  it('costs nothing: an anchor bomb is not set off', () => {
    const levels = Array.from(
      { length: 30 },
      (_, level) => `l${level + 1}: &l${level + 1} [${`*l${level}, `.repeat(9)}]`,
    );
    const { found, entries } = read(
      `l0: &l0 x\n${levels.join('\n')}\npair: LW-1\nlog:\n  - {date: 2026-02-01, paired}\n`,
    );
    expect(entries).toHaveLength(1);
    expect(found[0]).toBe('1:1 unknown-key');
    expect(found.length).toBeLessThan(400);
  });
});

describe('an entry that stands under a value', () => {
  const found = (value: string, entry: string) =>
    read(`pair: LW-1\nhousing: ${value}\n  - {${entry}}\nlog:\n  - {date: 2026-02-02, paired}\n`).found;

  it('is named: YAML takes it for words of that value', () => {
    expect(found('flight 2', 'date 2026-02-01')).toEqual(['3:5 unreadable-lines']);
  });

  it('is told why it counts for nothing', () => {
    const text =
      'pair: LW-1\nhousing: flight 2\n  - {date 2026-02-01}\nlog:\n  - {date: 2026-02-02, paired}\n';
    expect(read(text).findings).toMatchObject([{ at: { line: 3, length: 1 }, args: { why: 'outside-log' } }]);
  });

  it('in a text of several lines that was meant as one is a part of it', () => {
    expect(found('|', 'date: 2026-02-01')).toEqual([]);
  });
});

describe('a key without a name', () => {
  it.each(['- {date: 2026-02-01, : x}', '- {date: 2026-02-01, "": x}'])(
    '%s is unknown at its place',
    (line) => {
      const [finding] = readLog(line).findings;
      expect(finding).toMatchObject({ code: 'unknown-key', args: { key: '' } });
      expect(readLog(line).entries).toHaveLength(1);
    },
  );
});

describe('a line longer than any keeper writes', () => {
  const why = (text: string) => read(text).findings.flatMap(({ args }) => args.why ?? []);
  const entry = '  - {date: 2026-02-02, paired}\n';

  it('is not read, and the lines about it are', () => {
    const long = `pair: LW-1\nlog:\n  - {date: 2026-02-01, courting: ${'x'.repeat(100_000)}}\n${entry}`;
    expect(why(long)).toEqual(['too-long']);
    expect(read(long).found).toEqual(['3:3 unreadable-entry']);
    expect(read(long).entries).toHaveLength(1);
  });

  it('is told, however it came to be so long, and takes nothing with it', () => {
    const story = 'and so it went on, '.repeat(6000);
    const lines = [
      `{date: 2026-02-01, laid: 1, note: "${story}"}`,
      `{date: 2026-02-01, laid: 1, note: ${story}}`,
      `{date: 2026-02-01, laid: 1, note: "${story}}`,
      `{date: 2026-02-01, laid: 1} # ${story}`,
      `date: 2026-02-01\n    note: |\n      ${story}`,
    ];
    for (const line of lines) {
      const text = `pair: LW-1\nlog:\n${entry}  - ${line}\n  - {date: 2026-02-03, parted}\n`;
      expect(why(text)).toEqual(['too-long']);
      expect(read(text).entries).toHaveLength(2);
    }
  });

  it('is one line, not many short ones', () => {
    const many = `pair: LW-1\nlog:\n${'  # as ever\n'.repeat(10_000)}`;
    expect(read(`${many}${entry}`).entries).toHaveLength(1);
    expect(read(`${many}${entry.trimEnd()}`)).toMatchObject({ found: [], entries: [{}] });
    expect(why(`${many}  # ${'x'.repeat(100_001)}\n`)).toEqual(['too-long']);
    expect(why(`${many}  # ${'x'.repeat(100_001)}`)).toEqual(['too-long']);
  });
});

describe('no text', () => {
  it('makes the reader throw', () => {
    const pieces = fc.constantFrom(
      '{',
      '}',
      '[',
      ']',
      ':',
      ' ',
      '\n',
      '- ',
      '&a',
      '*a',
      '!',
      '|',
      '>',
      '"',
      "'",
      '#',
      '%',
      '\t',
      '? ',
      'date',
      'note: ',
      'log:',
      '🐣',
      '\0',
      '\ud800',
      '---',
      ',',
    );
    const soup = fc.array(pieces, { maxLength: 60 }).map((parts) => parts.join(''));
    fc.assert(
      fc.property(fc.oneof(soup, fc.string({ unit: 'binary' })), (text) => void read(text)),
      { numRuns: 500 },
    );
    fc.assert(
      fc.property(soup, (text) => void readLog(`- {date: 2026-02-01, ${text}`)),
      { numRuns: 500 },
    );
  });

  it('keeps the reader busy, however deep or long', () => {
    for (const text of ['['.repeat(50_000), '{a: '.repeat(50_000), `- ${'x'.repeat(200_000)}`]) {
      expect(read(text).found).toHaveLength(1);
    }
  });
});
