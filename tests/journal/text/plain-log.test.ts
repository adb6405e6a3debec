import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import type { Finding } from '../../../src/findings/finding.ts';
import { readPlainLog } from '../../../src/journal/text/plain-log.ts';
import { prepare } from '../../../src/journal/text/prepare.ts';
import { parseYaml } from '../../../src/journal/text/yaml.ts';
import { anyLine, journalOf, PAIRS } from '../../generators/lines.ts';

const FILE = 'pairs/lw-1.yaml';

/** Both ways to read one text; the first is null where it leaves it to the other. */
function bothWays(text: string) {
  const findings: Finding[] = [];
  const { lines, yaml } = prepare(FILE, text, findings);
  return { plain: readPlainLog(lines, yaml), whole: parseYaml(lines, { text: yaml, base: 0 }) };
}

const log = (...entries: string[]) =>
  `pair: LW-1\nhen: [a, b]\nlog:\n${entries.map((one) => `  ${one}\n`).join('')}`;

describe('lines as nestlog writes them are read without YAML, and as YAML reads them', () => {
  test.each([
    ['an empty observation', '- {date: 2026-03-01, paired}'],
    ['a count and a time', '- {date: 2026-03-01, laid: 1, time: 07:30}'],
    [
      'a map of refs, and a note',
      '- {date: 2026-03-10, candled: {fertile: [e1, e3], clear: e2}, note: "sat, all: day"}',
    ],
    ['a note of many tongues', '- {date: 2026-03-10, note: "Küken 🐣 ½"}'],
    ['words of several letters', '- {date: 2026-03-10, food: [live food, egg food], moved: flight 2}'],
    ['more blanks than needed', '-  { date:  2026-03-10 ,  laid: ~3 }'],
    ['rings and places of others', '- {date: 2026-03-10, ringed: {c1: ring:014, SF-2/1/c1: LW 26 1}}'],
  ])('%s', (_, entry) => {
    for (const text of [
      log(entry),
      log('# a comment', entry, '', entry),
      log(entry).replaceAll('\n', '\r\n'),
    ]) {
      const { plain, whole } = bothWays(text);
      expect(plain).not.toBeNull();
      expect(plain).toEqual(whole);
    }
  });
});

describe('what only the whole file can tell is left to YAML', () => {
  test.each([
    ['an entry over several lines', log('- {date: 2026-03-01,', '   laid: 1}')],
    ['an entry in block style', log('- date: 2026-03-01', '  laid: 1')],
    ['a text that goes on', log('- {date: 2026-03-01}', '  more')],
    ['an open bracket', log('- {date: 2026-03-01, laid: [e1}')],
    ['a key behind the log', `${log('- {date: 2026-03-01, paired}')}cock: x\n`],
    ['a second log', log('- {date: 2026-03-01}').repeat(2)],
    ['another indent', `${log('- {date: 2026-03-01}')}   - {date: 2026-03-02}\n`],
    ['a separator that is no line end', log('\u2028- {date: 2026-03-01}')],
    ['an empty log', log()],
    ['no log', 'pair: LW-1\n'],
  ])('%s', (_, text) => {
    expect(bothWays(text).plain).toBeNull();
  });
});

test.each([
  ['quotes of another kind', "- {date: 2026-03-02, note: 'cold', 'laid': 1}"],
  ['a note without quotes', '- {date: 2026-03-02, note: sat well, pulled}'],
  ['a comment behind it', '- {date: 2026-03-02, laid: 1} # late'],
  ['features of YAML', '- {date: 2026-03-02, note: &a x, site: *a }'],
  ['no blank behind a colon', '- {date:"2026-03-02", laid:[e1], lost:{clear: e2}}'],
  ['a key twice', '- {date: 2026-03-02, laid: 1, laid: 1}'],
])('a line that it does not know goes to YAML, and that line alone: %s', (_, entry) => {
  const { plain, whole } = bothWays(log('- {date: 2026-03-01, laid: 1}', entry));
  expect(plain).not.toBeNull();
  expect(plain).toEqual(whole);
});

const pieces = [
  'date',
  '2026-03-01',
  'laid',
  'note',
  'e1',
  'c2',
  '1',
  '~3',
  '3+',
  '07:30',
  'ring:014',
  'live food',
  'log',
];
const signs = [
  ': ',
  ', ',
  ':',
  ',',
  '{',
  '}',
  '[',
  ']',
  '"',
  "'",
  ' ',
  '  ',
  '#',
  ' #',
  '&a ',
  '*a',
  '!',
  '|',
  '>',
  '%',
  '@',
  '`',
  '?',
  '- ',
  '\\',
  '~',
  '\t',
  '\n',
  '\r\n',
  '\n  - {',
  '\n  # ',
  'é',
  '🐣',
  '\u2028',
  '\u0007',
  '\ufeff',
  '<<',
  '---',
];
const piece = fc.oneof(fc.constantFrom(...pieces), fc.constantFrom(...signs));
const scrap = fc.array(piece, { maxLength: 12 }).map((parts) => parts.join(''));
const written = fc.array(anyLine, { maxLength: 6 }).map((lines) => journalOf(PAIRS[0], lines));
/** Journals with a scrap of text somewhere, in the place of a few letters. */
const damaged = fc.tuple(written, fc.nat(2000), fc.nat(3), scrap).map(([text, at, length, put]) => {
  const from = at % (text.length + 1);
  return text.slice(0, from) + put + text.slice(from + length);
});
const scrappy = fc
  .array(scrap, { maxLength: 4 })
  .map((entries) => log(...entries.map((one) => `- {date: 2026-03-01, ${one}}`)));

it('never reads anything otherwise than YAML does', () => {
  fc.assert(
    fc.property(fc.oneof(written, damaged, scrappy), (text) => {
      const { plain, whole } = bothWays(text);
      if (plain !== null) expect(plain).toEqual(whole);
    }),
    { numRuns: Number(process.env.NESTLOG_PLAIN_RUNS ?? 1500) },
  );
}, 600_000);
