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
    ['quiet, sitting , both fine', 'sitting, note: "quiet, both fine"'],
    ['hen quiet, laid: 1, but fine', 'laid: 1, note: "hen quiet, but fine"'],
    ['quiet, laid: [e1, e2], fine, all of it', 'laid: [e1, e2], note: "quiet, fine, all of it"'],
    [
      'cold, unwell: {hen: fluffed, cock: thin}, so far',
      'unwell: {hen: fluffed, cock: thin}, note: "cold, so far"',
    ],
  ])('%s is an error, and keeps the note', (note, fixed) => {
    const { entries, found, fixes } = readLog(`- {date: 2026-03-02, note: ${note}}`);
    expect(found).toEqual(['3:30 note-swallows']);
    expect(entries[0]?.note?.text).toBe(note);
    expect(fixes).toEqual([`- {date: 2026-03-02, ${fixed}}`]);
    expect(readLog(fixes[0] as string).found).toEqual([]);
  });

  it('names all that it would lose', () => {
    expect(readLog('- {date: 2026-03-02, note: quiet, laid: 1, checked}').said).toEqual([
      'the note has no quotes, so it swallows `laid`, `checked` behind it, uncounted',
    ]);
  });

  it('swallows no word that says nothing by itself', () => {
    const { found, fixes } = readLog('- {date: 2026-03-02, note: hen quiet, laid}');
    expect(found).toEqual(['3:30 unquoted-note']);
    expect(fixes).toEqual(['- {date: 2026-03-02, note: "hen quiet, laid"}']);
  });

  it('leaves the quotes of what stands before it', () => {
    const { fixes } = readLog('- {date: 2026-03-02, site: "gorse", note: hen quiet, laid: 1}');
    expect(fixes).toEqual(['- {date: 2026-03-02, site: "gorse", laid: 1, note: "hen quiet"}']);
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
