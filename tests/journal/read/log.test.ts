import { describe, expect, it } from 'vitest';
import { read, readLog } from '../reading.ts';

describe('a log', () => {
  it('keeps the order of the file', () => {
    const { entries } = readLog('- {date: 2026-03-02, laid: 1}', '- {date: 2026-03-01, laid: 1}');
    expect(entries.map(({ at }) => at.line)).toEqual([3, 4]);
  });

  it('of plain words is answered with an entry', () => {
    expect(read('pair: LW-1\nlog: none\n').fixes).toEqual([
      'each entry begins with a dash on a line of its own:\n- {date: 2026-03-01, laid: 1, note: "first egg"}',
    ]);
  });

  it('may be empty', () => {
    expect(read('pair: LW-1\nlog:\n').found).toEqual([]);
    expect(read('pair: LW-1\nlog: []\n').found).toEqual([]);
  });

  it.each(['none', '{date: 2026-03-01, laid: 1}', '\n  date: 2026-03-01\n  laid: 1'])(
    'is a list: %s is none',
    (log) => {
      expect(read(`pair: LW-1\nlog: ${log}\n`).findings.map(({ code }) => code)).toEqual(['log-no-list']);
    },
  );

  it('counts identical entries once, however they are written', () => {
    const { entries, findings } = readLog(
      '- {date: 2026-03-01, laid: 1, note: "x"}',
      '- {date: 2026-03-01, laid: 1}',
      '- {date: 2026-03-01,   laid: "1", note: x}',
      '- {date: 2026-03-02, laid: 1}',
    );
    expect(entries.map(({ at }) => at.line)).toEqual([3, 4, 6]);
    expect(findings).toMatchObject([{ code: 'same-entry', at: { line: 5, column: 5 }, args: { line: 3 } }]);
  });

  it('does not take different lists for the same', () => {
    expect(
      readLog('- {date: 2026-03-01, laid: [e1, e2]}', '- {date: 2026-03-01, laid: "e1, e2"}').entries,
    ).toHaveLength(2);
  });

  it('over several lines an entry is a hint once, with the line to paste', () => {
    const { entries, found, fixes } = read(
      'pair: LW-1\nlog:\n  - date: 2026-03-01\n    paired:\n    note: off, at dusk\n    lost:\n      clear: [e1, e2]\n  - date: 2026-03-02\n    laid: 1\n',
    );
    expect(entries.map(({ saw }) => saw.map(({ key }) => key))).toEqual([['paired', 'lost'], ['laid']]);
    expect(found).toEqual(['3:5 block-style']);
    expect(fixes).toEqual([
      'one entry a line:\n- {date: 2026-03-01, paired, lost: {clear: [e1, e2]}, note: "off, at dusk"}',
    ]);
  });

  it('has a year for dates that lack one, from the entry before or the first that has one', () => {
    const { fixes } = readLog(
      '- {date: 03-01, laid: 1}',
      '- {date: 2025-12-31, laid: 1}',
      '- {date: 03-02, laid: 1}',
    );
    expect(fixes).toEqual(['write `date: 2025-03-01`', 'write `date: 2025-03-02`']);
    const { fixes: before } = readLog('- {date: 03-01, laid: 1}', '- {laid: 1, date: 2025-12-31}');
    expect(before).toEqual(['write `date: 2025-03-01`']);
    const { fixes: behind } = readLog('- {Date: 2025-12-31, laid: 1}', '- {date: 03-02, laid: 1}');
    expect(behind).toEqual(['write `date`', 'write `date: 2025-03-02`']);
    const years = (...dates: string[]) =>
      readLog(...dates.map((date) => `- {date: ${date}, laid: 1}`)).fixes.filter((fix) =>
        fix?.startsWith('write `'),
      );
    expect(years('2025-12-31', '2026-01-02', '03-02')).toEqual(['write `date: 2026-03-02`']);
    expect(years('[2025]', 'soon', '03-02', '2025-12-31')).toEqual(['write `date: 2025-03-02`']);
    // A slip of the finger: nobody keeps birds for eighty years.
    expect(years('2025-12-31', '2105-12-31', '03-02')).toEqual(['write `date: 2025-03-02`']);
    expect(years('2025-12-31', '2104-12-31', '03-02')).toEqual(['write `date: 2104-03-02`']);
  });

  it('names an entry that is refused once, and keeps the others', () => {
    const { entries, found } = readLog(
      '- *a',
      '- {laid: 1}',
      '- {date: 03-02, laid: 1}',
      '- {date: 2026-03-01, laid: 1}',
    );
    expect(found).toEqual(['3:5 yaml-feature', '4:5 no-date', '5:12 date-shape']);
    expect(entries).toHaveLength(1);
  });
});
