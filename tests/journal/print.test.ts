import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Fields, List, type Node, Text } from '../../src/journal/nodes.ts';
import { observations } from '../../src/journal/observations/index.ts';
import { blockOf, lineOf, sameText } from '../../src/journal/print.ts';
import { Lines } from '../../src/journal/text/lines.ts';
import { parseYaml } from '../../src/journal/text/yaml.ts';
import { readLog, seen } from './reading.ts';

function entry(line: string): Fields {
  const parsed = parseYaml(new Lines('a', line), { text: line, base: 0 });
  const root = 'root' in parsed ? parsed.root : null;
  if (!(root instanceof List && root.items[0] instanceof Fields)) throw new Error(`no entry: ${line}`);
  return root.items[0];
}

describe('an entry as a key a line', () => {
  it('has its note last, a colon behind what is empty, and quotes only where they are needed', () => {
    expect(
      blockOf(entry('- {note: "x", date: 2026-03-01, paired, lost: {clear: [e1, e2]}, "odd, key": }')),
    ).toEqual(['date: 2026-03-01', 'paired:', 'lost: {clear: [e1, e2]}', '"odd, key":', 'note: "x"']);
  });
});

describe('an entry as one line', () => {
  it('has its note last and quoted, and quotes only what needs them', () => {
    expect(
      lineOf(
        entry(
          '- {note: "x", date: 2026-03-01, time: 07:30, paired, food: {"live food": 3}, courting: "a, b"}',
        ),
      ),
    ).toBe('- {date: 2026-03-01, time: 07:30, paired, food: {live food: 3}, courting: "a, b", note: "x"}');
  });

  const at = { file: 'a', line: 1, column: 1, length: 1 };
  const text = fc.oneof(
    fc.string(),
    fc.string({ unit: 'binary' }),
    fc.constantFrom('no', '~', '1:30', '- x', '# x', 'a: b', "it's", '🐣'),
  );
  const { value } = fc.letrec<{ value: Node }>((tie) => ({
    value: fc.oneof(
      { depthSize: 'small' },
      text.map((said) => new Text(said, at)),
      fc.array(tie('value'), { maxLength: 3 }).map((items) => new List(items, at)),
      fc.dictionary(text, tie('value'), { maxKeys: 3 }).map((pairs) => fieldsOf(pairs)),
    ),
  }));
  const fieldsOf = (pairs: Record<string, Node>) =>
    new Fields(
      Object.entries(pairs)
        .filter(([key]) => key !== '<<')
        .map(([key, node]) => [new Text(key, at), node] as const),
      at,
    );

  it('reads as what was printed, whatever it holds', () => {
    fc.assert(
      fc.property(
        fc.dictionary(fc.oneof(text, fc.constant('note')), value, { minKeys: 1, maxKeys: 4 }),
        (pairs) => {
          const printed = lineOf(fieldsOf({ date: new Text('2026-03-01', at), ...pairs }));
          expect(printed).not.toMatch(/\n/);
          expect(sameText(entry(printed))).toBe(
            sameText(fieldsOf({ date: new Text('2026-03-01', at), ...pairs })),
          );
        },
      ),
      { numRuns: 300 },
    );
  });

  it('reads as the same observations, whichever they are', () => {
    const examples = Object.values(observations).map(({ example }) => example);
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.constantFrom(...examples), {
          minLength: 1,
          selector: (said) => said.split(':')[0],
        }),
        fc.string(),
        (said, note) => {
          const line = `- {date: 2026-03-01, ${said.join(', ')}, note: ${JSON.stringify(note)}}`;
          const first = readLog(line);
          const again = readLog(lineOf(entry(line)));
          expect(again.found).toEqual(first.found);
          expect(seen(again.entries)).toEqual(seen(first.entries));
          expect(again.entries[0]?.note?.text).toBe(first.entries[0]?.note?.text);
        },
      ),
      { numRuns: 50 },
    );
  });
});

describe('what two entries say is the same', () => {
  it('in any order of keys, but not of a list', () => {
    expect(sameText(entry('- {a: 1, b: [x, y]}'))).toBe(sameText(entry('- {b: ["x", y], a: "1"}')));
    expect(sameText(entry('- {b: [x, y]}'))).not.toBe(sameText(entry('- {b: [y, x]}')));
    expect(sameText(entry('- {b: [x, y]}'))).not.toBe(sameText(entry('- {b: "x,y"}')));
    expect(sameText(entry('- {b}'))).not.toBe(sameText(entry('- {b: ""}')));
  });
});
