import { describe, expect, it } from 'vitest';
import { read, readLog } from '../reading.ts';

describe('an unquoted note that swallows what was observed', () => {
  it.each([
    [
      'hen puffed up, unwell: {hen: fluffed on the floor}',
      'unwell: {hen: fluffed on the floor}, note: "hen puffed up"',
    ],
    ['hen quiet, laid: 1', 'laid: 1, note: "hen quiet"'],
    ['so “quiet”, sitting', 'sitting, note: "so “quiet”"'],
    ['quiet, sitting, both fine', 'sitting, note: "quiet, both fine"'],
    ['hen off: cold, laid: [e1, e2], checked', 'laid: [e1, e2], checked, note: "hen off: cold"'],
  ])('%s is an error, and keeps the note', (note, fixed) => {
    const { entries, found, fixes } = readLog(`- {date: 2026-03-02, note: ${note}}`);
    expect(found).toEqual(['3:30 note-swallows']);
    expect(entries[0]?.note?.text).toBe(note);
    expect(fixes).toEqual([`- {date: 2026-03-02, ${fixed}}`]);
    expect(readLog(fixes[0] as string).found).toEqual([]);
  });

  it('has a fix that reads where its key stands in quotes', () => {
    const { fixes } = readLog('- {date: 2026-03-02, "note": hen quiet, laid: 1}');
    expect(fixes).toEqual(['- {date: 2026-03-02, laid: 1, note: "hen quiet"}']);
  });

  it('in an entry over several lines gets its keys on lines of their own', () => {
    const { fixes } = read('pair: LW-1\nlog:\n  - date: 2026-03-01\n    note: hen off, laid: 1\n');
    expect(fixes).toContain('laid: 1\nnote: "hen off"');
  });

  it('is told of a bird’s log by what that may hold', () => {
    const found = (note: string) =>
      read(`birds:\n  - id: A\n    log:\n      - {date: 2026-03-01, note: ${note}}\n`, 'birds.yaml').found;
    expect(found('puffed up, unwell: on the floor')).toEqual(['4:34 note-swallows']);
    expect(found('puffed up, laid: no')).toEqual(['4:34 unquoted-note']);
  });
});
