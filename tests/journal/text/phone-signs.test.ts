import { describe, expect, it } from 'vitest';
import { readFile } from '../../../src/journal/record.ts';

function read(...log: string[]) {
  const { says, findings } = readFile('pairs/LW-1.yaml', `pair: LW-1\nlog:\n${log.join('\n')}\n`);
  const entries = [...(says.journal?.entries ?? [])];
  return {
    saw: entries.map(({ saw }) => saw.map(({ key }) => key).join(' ')),
    notes: entries.flatMap(({ note }) => note?.text ?? []),
    found: findings.map(({ code, at, args }) => `${at.line}:${at.column} ${code} ${args.key} ${args.meant}`),
  };
}

describe('signs that a phone puts for those of YAML are read as these', () => {
  it('a blank that never breaks is a blank, and nobody is told of what nobody sees', () => {
    expect(
      read(
        '  -\u00a0{date: 2026-03-01, laid: 1}',
        '  - {date:\u00a02026-03-02, laid: 1}',
        '\u00a0\u202f- {date: 2026-03-03, laid: 1}',
      ),
    ).toEqual({ saw: ['laid', 'laid', 'laid'], notes: [], found: [] });
  });

  it('a long dash, a dot or a star before an entry is its dash, told once a file for each', () => {
    expect(
      read(
        '  – {date: 2026-03-01, laid: 1}',
        '  – {date: 2026-03-02, laid: 1}',
        '  * {date: 2026-03-03, laid: 1}',
        '  - {date: 2026-03-04, laid: 1}',
        '  • {date: 2026-03-05, laid: 1}',
      ),
    ).toEqual({
      saw: ['laid', 'laid', 'laid', 'laid', 'laid'],
      notes: [],
      found: ['3:3 read-as – -', '5:3 read-as * -', '7:3 read-as • -'],
    });
  });

  it('quotes of any keyboard around a whole text are quotes', () => {
    expect(
      read(
        '  - {“date”: 2026-03-01, laid: 1}',
        '  - {date: ‘2026-03-02’, laid: 1}',
        '  - {date: 2026-03-03, note: “off the nest: cold, wet”}',
        '  - {date: 2026-03-04, note: „sat well“}',
      ),
    ).toEqual({
      saw: ['laid', 'laid', '', ''],
      notes: ['off the nest: cold, wet', 'sat well'],
      found: ['3:6 read-as “ "', '4:12 read-as ‘ "', '6:30 read-as „ "'],
    });
  });

  it('colons and commas of full width are colons and commas', () => {
    expect(read('  - {date： 2026-03-01， laid： 1}')).toEqual({
      saw: ['laid'],
      notes: [],
      found: ['3:10 read-as ： :', '3:22 read-as ， ,'],
    });
    expect(read('  - {date ： 2026-03-01, laid\t： 1}').saw).toEqual(['laid']);
  });

  it('a comma of full width in a name without braces is its own', () => {
    const { says, findings } = readFile('pairs/LW-1.yaml', 'pair: LW-1\nhousing: flight 2，left\nlog:\n');
    expect([says.journal?.housing?.text, findings]).toEqual(['flight 2，left', []]);
  });

  it('what stands in quotes or in a note is left as it was written', () => {
    const notes = ['the hen’s nest – cold： “wet”, ‘off’， so', 'he said, “sat”, then * left'];
    const { notes: kept, found } = read(
      `  - {date: 2026-03-01, note: "${notes[0]}"}`,
      `  - {date: 2026-03-02, note: ${notes[1]}}`,
      '  # – {date： 2026-03-03}',
    );
    expect(kept).toEqual(notes);
    expect(found).toEqual([expect.stringContaining('unquoted-note')]);
  });
});
