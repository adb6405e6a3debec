import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readFile } from '../../src/journal/record.ts';
import { planned } from './planned.ts';

/** What a journal's entries say, without their places. */
function entriesOf(text: string): string[] {
  const entries = readFile('pairs/LW-1.yaml', text).says.journal?.entries ?? [];
  return [...entries].map((entry) =>
    JSON.stringify(entry, (key, value) => (/^(at|dateAt)$/.test(key) ? undefined : value)),
  );
}

const word = fc.stringMatching(/^[\p{L}\p{N}]{1,8}$/u);
const blanks = fc.stringMatching(/^[ \t]{0,3}$/);
const note = fc
  .string({ unit: fc.constantFrom(...'abcä雀🐣 :,#{}[]"\'\\|>&*!%@`-?='), maxLength: 20 })
  .map((text) => JSON.stringify(text));
const date = fc.integer({ min: 1, max: 28 }).map((number) => `2026-02-${String(number).padStart(2, '0')}`);
const comment = fc.tuple(word, word).map((words) => `# ${words.join(': ')}`);

/** What a keeper writes of one visit, as keys with values. */
const visit = fc
  .tuple(
    date,
    fc.constantFrom('paired', 'laid: 1', 'candled: {clear: [e1, e2]}', 'heard: begging', 'sitting'),
    note,
  )
  .map(([day, saw, said]) => [`date: ${day}`, saw, `note: ${said}`]);

/** One item of a log, a line or several, in its style. */
const item = (indent: string, gap: string) =>
  fc.oneof(
    {
      weight: 5,
      arbitrary: fc.tuple(visit, blanks).map(([keys, end]) => [`${indent}-${gap}{${keys.join(', ')}}${end}`]),
    },
    {
      weight: 3,
      arbitrary: visit.map(([first, second = '', ...rest]) => [
        `${indent}-${gap}${first}`,
        ...[second.includes(':') ? second : `${second}:`, ...rest].map(
          (key) => `${indent} ${' '.repeat(gap.length)}${key}`,
        ),
      ]),
    },
    {
      weight: 1,
      arbitrary: fc
        .tuple(date, word, word)
        .map(([day, one, two]) => [
          `${indent}-${gap}date: ${day}`,
          `${indent} ${' '.repeat(gap.length)}paired:`,
          `${indent} ${' '.repeat(gap.length)}note: |`,
          ...[one, '', `# ${two}`].map((line) =>
            line === '' ? '' : `${indent}     ${' '.repeat(gap.length)}${line}`,
          ),
        ]),
    },
    {
      weight: 2,
      arbitrary: fc
        .tuple(blanks, comment)
        .map(([before, text]) => [`${before.replaceAll('\t', ' ')}${text}`]),
    },
    { weight: 1, arbitrary: blanks.map((line) => [line.replaceAll('\t', ' ')]) },
  );

const journal = fc
  .record({
    mark: fc.constantFrom('', '', '\ufeff'),
    eol: fc.constantFrom('\n', '\n', '\r\n', '\r'),
    top: fc.array(fc.oneof(comment, fc.constant('')), { maxLength: 3 }),
    indent: fc.constantFrom('', ' ', '  ', '    '),
    gap: fc.constantFrom(' ', '  ', '   '),
    behind: fc.array(fc.constantFrom('housing: flight 2', 'species: lavender waxbill  ', '# the end', ''), {
      maxLength: 3,
    }),
    final: fc.boolean(),
  })
  .chain((style) => fc.tuple(fc.constant(style), fc.array(item(style.indent, style.gap), { maxLength: 8 })))
  .map(([{ mark, eol, top, behind, final }, items]) => {
    const lines = [...top, 'pair: LW-1', 'log:', ...items.flat(), ...new Set(behind)];
    return mark + lines.join(eol) + (final ? eol : '');
  });

describe('for any journal that a keeper may write', () => {
  test('the text without the new part is the old one, byte for byte', () => {
    fc.assert(
      fc.property(journal, (text) => {
        const plan = planned(text, ['laid=1', 'note=new']);
        expect(plan).not.toBeNull();
        if (plan === null) return;
        const { after, at, inserted } = plan;
        const bytes = Buffer.from(after);
        const from = Buffer.byteLength(after.slice(0, at));
        const rest = Buffer.concat([
          bytes.subarray(0, from),
          bytes.subarray(from + Buffer.byteLength(inserted)),
        ]);
        expect(rest.equals(Buffer.from(text))).toBe(true);
      }),
      { numRuns: 400 },
    );
  });

  test('so it is when whole lines are taken out, whatever they end with', () => {
    fc.assert(
      fc.property(journal, (text) => {
        const plan = planned(text, ['laid=1', 'note=new']);
        const old = text.split(/\r\n|\n|\r/);
        const now = plan?.after.split(/\r\n|\n|\r/) ?? [];
        now.splice((plan?.line ?? 0) - 1, plan?.lines.length ?? 0);
        expect(now).toEqual(old);
      }),
      { numRuns: 200 },
    );
  });

  test('the result says what it said, and the new entry last', () => {
    fc.assert(
      fc.property(journal, (text) => {
        const after = planned(text, ['laid=1', 'note=new'])?.after ?? '';
        const [last, ...others] = entriesOf(after).reverse();
        expect(others.reverse()).toEqual(entriesOf(text));
        expect(last).toContain('"key":"laid"');
        expect(last).toContain('"text":"new"');
      }),
      { numRuns: 200 },
    );
  });
});

test('every journal of the example room takes an entry at the end of its log', () => {
  const pairs = fileURLToPath(new URL('../../journals-example/pairs', import.meta.url));
  for (const name of readdirSync(pairs, { recursive: true, encoding: 'utf8' }).filter((one) =>
    one.endsWith('.yaml'),
  )) {
    const text = readFileSync(`${pairs}/${name}`, 'utf8');
    expect(planned(text, ['checked']), name).toMatchObject({ lines: ['  - {date: 2026-03-04, checked}'] });
  }
});

test('a log that is none is left alone', () => {
  expect(planned('pair: LW-1\nlog: none yet\n', ['laid=1'])).toBeNull();
  expect(planned('- a list\n', ['laid=1'])).toBeNull();
});

test('a bird that is not listed has no log', () => {
  expect(planned('birds:\n  - id: A\n', ['weighed=8'], { of: 'bird', id: 'B' })).toBeNull();
});

test('the plan names the new lines and the number of the first', () => {
  const text = 'pair: LW-1\nlog:\n  - date: 2026-03-01\n    paired:';
  expect(planned(text, ['laid=1'])).toMatchObject({
    line: 5,
    lines: ['  - date: 2026-03-04', '    laid: 1'],
  });
});
