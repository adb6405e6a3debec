import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readFile, readSource } from '../../../src/journal/record.ts';
import { withoutRepeats } from '../../../src/journal/text/repeats.ts';
import { corpus } from '../../fuzz/corpus.ts';
import { mutated, slips } from '../../fuzz/mutations.ts';
import { day } from '../../rooms.ts';

const path = 'pairs/LW-1.yaml';
const journal = (...lines: string[]) => `pair: LW-1\nlog:\n${lines.map((line) => `${line}\n`).join('')}`;
const said = (text: string) => {
  const { says, findings } = readFile(path, text);
  return { entries: [...(says.journal?.entries ?? [])], findings };
};

function expectReadAlike(text: string): void {
  const { says, findings } = readSource({ path, text });
  expect({ entries: [...(says.journal?.entries ?? [])], findings }).toStrictEqual(said(text));
}

describe('an entry that says of another day what one above says is read once', () => {
  it('whatever it says, its note included', () => {
    const text = journal(
      '  - {date: 2026-03-01, checked: {eggs: 3}, note: "quiet"}',
      '  # a comment',
      '  - {date: 2026-03-02, checked: {eggs: 3}, note: "quiet"}',
      '  - {date: 2026-03-03, food: [seed]}',
      '',
      '  - {date: 2026-03-04, checked: {eggs: 3}, note: "quiet"}',
    );
    expect(withoutRepeats(text)).toEqual({
      text: journal(
        '  - {date: 2026-03-01, checked: {eggs: 3}, note: "quiet"}',
        '  # a comment',
        '',
        '  - {date: 2026-03-03, food: [seed]}',
        '',
        '',
      ),
      kept: [3, 6],
      repeats: [
        { line: 5, date: day('2026-03-02'), of: 3 },
        { line: 8, date: day('2026-03-04'), of: 3 },
      ],
    });
    expectReadAlike(text);
  });

  it.each([
    [
      'after, whose time is one of that day',
      ['time: 18:00, after: 07:00, laid: 1', 'time: 18:00, after: 07:00, laid: 1'],
    ],
    ['what is new', ['laid: 1', 'laid: 2']],
    ['what stands at another column', ['laid: 1', 'laid:  1']],
  ])('but not %s', (_, says) => {
    const text = journal(...says.map((one, index) => `  - {date: 2026-03-0${index + 1}, ${one}}`));
    expect(withoutRepeats(text)).toBeNull();
    expectReadAlike(text);
  });

  it('nor of a day that never was, or one that is named twice: it may be the same entry in other words', () => {
    const never = journal('  - {date: 2026-02-01, laid: 1}', '  - {date: 2026-02-30, laid: 1}');
    const twice = journal(
      '  - {date: 2026-03-01, laid: 1, sitting}',
      '  - {date: 2026-03-02, laid: 1, sitting}',
      '  - {date: 2026-03-02, sitting, laid: 1}',
    );
    for (const text of [never, twice]) {
      expect(withoutRepeats(text)).toBeNull();
      expectReadAlike(text);
    }
    expect(said(twice).findings.map(({ code }) => code)).toEqual(['same-entry']);
  });

  it('and where there is something to find, each line is told of as if it were alone', () => {
    const text = journal('  - {date: 2026-03-01, laid: 0}', '  - {date: 2026-03-02, laid: 0}');
    expect(withoutRepeats(text)?.repeats).toHaveLength(1);
    expect(readSource({ path, text }).findings.map(({ at }) => at.line)).toEqual([3, 4]);
  });

  it('what only looks like an entry is none', () => {
    const text = journal(
      '  - {date: 2026-03-01, checked}',
      '  - {date: 2026-03-03, note: "a text that goes on}',
      '  - {date: 2026-03-02, checked}',
      '  - and ends here"}',
    );
    expect(withoutRepeats(text)).toBeNull();
    expectReadAlike(text);
  });
});

const sound = [
  ', checked}',
  ', checked, note: "quiet"}',
  ', checked, note: "“ruhig”"}',
  ', laid: 1, sitting}',
  ', sitting, laid: 1}',
  ', time: 18:00, after: 07:00, laid: 1}',
  ', ringed: {c1: LW 7}}',
  ', ringed: {c1: LW 8}}',
  ', checked} # quiet',
];
const odd = [
  ', checked} # } "',
  ', note: "open}',
  ', note: open',
  ', nonsense}',
  '}',
  '',
  '\n    checked: ""',
  '}\n  # quiet "}',
  '}\n  more"}',
  '}\nlog:',
];
const mostly = (usual: readonly string[], rare: readonly string[]) =>
  fc.oneof(
    { weight: 40, arbitrary: fc.constantFrom(...usual) },
    { weight: 1, arbitrary: fc.constantFrom(...rare) },
  );
const entry = fc
  .tuple(
    mostly(['  - {date: '], ['  -  {date: ', '- {date: ', '    {date: ', '  - date: ']),
    fc.integer({ min: 1, max: 4 }),
    fc.integer({ min: 10, max: 29 }),
    mostly(sound, odd),
  )
  .map(([before, month, on, says]) => `${before}2026-0${month}-${on}${says}`);

describe('reading once is reading', () => {
  it('whatever lines stand together, with any line ends', () => {
    let folded = 0;
    fc.assert(
      fc.property(
        fc.array(entry, { maxLength: 14 }),
        fc.constantFrom('\n', '\n', '\r\n', '\r'),
        (lines, end) => {
          const text = journal(...lines).replaceAll('\n', end);
          if (withoutRepeats(text) !== null) folded++;
          expectReadAlike(text);
        },
      ),
      { numRuns: 600 },
    );
    expect(folded).toBeGreaterThan(100);
  });

  it('in every journal that we have, with any slip of the hand', () => {
    const journals = corpus(fileURLToPath(new URL('../../..', import.meta.url)))
      .flat()
      .filter(({ path }) => path.startsWith('pairs/'));
    for (const { text } of journals) expectReadAlike(text);
    fc.assert(
      fc.property(fc.constantFrom(...journals), slips(3), (one, made) => {
        expectReadAlike(mutated(one.text, made));
      }),
      { numRuns: 150 },
    );
  });
});
