import { describe, expect, it } from 'vitest';
import { maskNote, rawNote } from '../../../src/journal/text/note.ts';
import { read, readLog, seen } from '../reading.ts';

describe('an unquoted note', () => {
  it.each([
    ['sat well, pulled', 'a comma makes a key of the next word'],
    ['cock sings, hen: unmoved', 'so does a word before a colon'],
    ['sat well, looked fine', 'words are words'],
    ['hen off: cold', 'a second colon'],
    ['off the nest # twice', 'a comment sign'],
    ['"cold" she was', 'quotes around a part'],
    ["'tis cold, she is off", 'an apostrophe in front'],
    ['two [or three', 'a bracket'],
    ['@ the window', 'a reserved sign'],
    ['nest {the left one}, tidy', 'braces'],
    ['🐣 heard: begging', 'wide letters'],
    ['5', 'a bare number, which is no trap'],
  ])('%s is the note (%s)', (note) => {
    const { entries, found, fixes } = readLog(
      `- {date: 2026-03-01, laid: 2, note: ${note}}`,
      '- {date: 2026-03-02, sitting}',
    );
    expect(entries.map((entry) => entry.note?.text)).toEqual([note, undefined]);
    expect(seen(entries)).toEqual(['laid {"kind":"count","count":2,"exact":"exactly"}', 'sitting "seen"']);
    expect(found).toEqual(note === '5' ? [] : ['3:39 unquoted-note']);
    expect(fixes).toEqual(
      note === '5' ? [] : [`- {date: 2026-03-01, laid: 2, note: ${JSON.stringify(note)}}`],
    );
  });

  it('has a fix that reads as the same entry, without a finding', () => {
    const first = readLog('- {date: 2026-03-01, note: hen "off": cold, \\pulled}');
    const again = readLog(first.fixes[0] as string);
    expect(again.found).toEqual([]);
    expect(again.entries[0]?.note?.text).toBe(first.entries[0]?.note?.text);
  });

  it('in quotes is left alone, whatever follows', () => {
    const { entries, found } = readLog('- {date: 2026-03-01, note: "sat well, pulled", laid: 2}');
    expect(entries[0]?.note?.text).toBe('sat well, pulled');
    expect(entries[0]?.saw).toHaveLength(1);
    expect(found).toEqual([]);
  });

  it('in quotes is not to blame for what is wrong elsewhere', () => {
    expect(readLog('- {date: 2026-03-01, note: "fine", laid: [e1}').found).toEqual(['3:47 unreadable-entry']);
  });

  it('ends at the end of its line where the entry goes on', () => {
    const { entries } = read(
      'pair: LW-1\nlog:\n  - {date: 2026-03-01, note: sat well, pulled,\n     laid: 2}\n',
    );
    expect(entries[0]?.note?.text).toBe('sat well, pulled');
    expect(entries[0]?.saw.map(({ key }) => key)).toEqual(['laid']);
  });

  it('over two lines, with commas on the first, takes in those and not the entry’s next keys', () => {
    const { entries, fixes } = read(
      'pair: LW-1\nlog:\n  - {date: 2026-03-01, note: sat well, pulled, both off ,  \n     laid: 2, nest: lined}\n',
    );
    expect(entries[0]?.note?.text).toBe('sat well, pulled, both off');
    expect(entries[0]?.saw.map(({ key }) => key)).toEqual(['laid', 'nest']);
    expect(fixes).toContain('- {date: 2026-03-01, note: "sat well, pulled, both off" ,');
  });

  it('has no blanks at its end, nor a key of its own where it is empty', () => {
    expect(readLog('- {date: 2026-03-01, note: sat well, pulled   }').entries[0]?.note?.text).toBe(
      'sat well, pulled',
    );
    const empty = readLog('- {date: 2026-03-01, note: , laid: 2}');
    expect(empty.entries[0]?.saw).toHaveLength(1);
    expect(empty.found).toEqual([]);
  });

  it('with a colon has no blanks at its end either', () => {
    const { entries, fixes } = readLog('- {date: 2026-03-01, note: hen off: cold  }');
    expect(entries[0]?.note?.text).toBe('hen off: cold');
    expect(fixes).toEqual(['- {date: 2026-03-01, note: "hen off: cold"  }']);
  });

  it('before the last key of its line ends before that of the next line', () => {
    const { entries, found } = read(
      'pair: LW-1\nlog:\n  - {date: 2026-03-01, note: sat well,\n     laid: 2}\n',
    );
    expect(found).toEqual([]);
    expect(entries[0]?.note?.text).toBe('sat well');
    expect(entries[0]?.saw).toHaveLength(1);
  });

  it('in an entry whose dash and brace stand apart, or close, is read too', () => {
    for (const dash of ['-   {', '- {'])
      expect(readLog(`${dash}date: 2026-03-01, note: hen off: cold}`).entries[0]?.note?.text).toBe(
        'hen off: cold',
      );
  });

  it('does not take in the comment behind the entry', () => {
    expect(readLog('- {date: 2026-03-01, note: sat well, pulled} # {really}').entries[0]?.note?.text).toBe(
      'sat well, pulled',
    );
  });

  it('is read raw in an entry over several lines too', () => {
    const { entries, found } = read(
      'pair: LW-1\nlog:\n  - date: 2026-03-01\n    note: hen off: cold\n    laid: 2\n',
    );
    expect(entries[0]?.note?.text).toBe('hen off: cold');
    expect(entries[0]?.saw).toHaveLength(1);
    expect(found).toEqual(['3:5 block-style', '4:11 unquoted-note']);
  });

  it('over several lines may speak of what stands in braces', () => {
    const note = 'hen off - {the left nest}: cold';
    expect(
      read(`pair: LW-1\nlog:\n  - date: 2026-03-01\n    note: ${note}\n    laid: 2\n`).entries[0],
    ).toMatchObject({ note: { text: note }, saw: [{ key: 'laid' }] });
  });
});

describe('a masked note', () => {
  it('keeps every other offset of the entry', () => {
    const entry = '- {note: a: b, x}';
    const span = rawNote(entry);
    expect(span).toEqual({ from: 9, to: 16 });
    expect(span && maskNote(entry, span)).toBe('- {note: "xxxxx"}');
    expect(maskNote('- {note: :}', { from: 9, to: 10 })).toBe('- {note: x}');
  });

  it('is not looked for where there is none', () => {
    expect(rawNote('- {date: 2026-03-01, laid: [}')).toBeNull();
    expect(rawNote('- {date: 2026-03-01, note: }')).toBeNull();
  });
});
