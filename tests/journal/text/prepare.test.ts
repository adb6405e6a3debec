import { describe, expect, it } from 'vitest';
import { read } from '../reading.ts';

const journal = 'pair: LW-1\nlog:\n  - {date: 2026-02-01, paired}\n';

/** What is found, and how many entries count. */
function reading(text: string) {
  const { found, entries } = read(text);
  return [...found, entries.length];
}

describe('a file before it is parsed', () => {
  it('may begin with a byte order mark, which takes no column', () => {
    expect(read(`\ufeff${journal}`).journal.pair.at).toMatchObject({ line: 1, column: 7 });
  });

  it('may have the line ends of any system', () => {
    expect(reading(journal.replaceAll('\n', '\r\n'))).toEqual([1]);
    expect(reading(journal.replaceAll('\n', '\r'))).toEqual([1]);
    expect(read(`${journal}  - {date: x}\n`.replaceAll('\n', '\r\n')).found).toEqual(['4:12 date-shape']);
  });

  it('may begin with --- and end with ...', () => {
    expect(reading(`# our oldest pair\n---\n${journal}...\n`)).toEqual([1]);
  });

  it('has no directives; the rest is read', () => {
    expect(reading(`%YAML 1.1\n---\n${journal}`)).toEqual(['1:1 yaml-feature', 1]);
    expect(reading(`%TAG ! x\n${journal}`)).toEqual(['1:1 yaml-feature', 1]);
  });

  it('has no second document: what follows the mark is not read', () => {
    expect(reading(`${journal}---\npair: LW-2\n`)).toEqual(['4:1 several-documents', 1]);
    expect(reading(`${journal}...\nx: 1\n`)).toEqual(['4:1 several-documents', 1]);
    expect(reading(`---\n---\n${journal}`)).toEqual(['2:1 several-documents', 0]);
    expect(reading(`${journal}---\n# nothing more\n`)).toEqual([1]);
  });

  it('tells of a comment or blanks without end, wherever they stand, and reads all around them', () => {
    const comment = `# ${'x'.repeat(99_999)}`;
    const longest = comment.slice(1);
    expect(reading(`#${longest.slice(1)}\n${journal}`)).toEqual([1]);
    expect(reading(`${comment}\n${journal}`)).toEqual(['1:1 unreadable-lines', 1]);
    expect(reading(journal.replace('log:', `${comment}\nlog:`))).toEqual(['2:1 unreadable-lines', 1]);
    expect(reading(journal.replace('log:\n', `log:\n  ${comment}\n`))).toEqual(['3:3 unreadable-lines', 1]);
    expect(reading(`${journal}${comment}`)).toEqual(['4:1 unreadable-lines', 1]);
    const block = `pair: LW-1\r\nlog:\r\n  - date: 2026-02-01\r\n${' '.repeat(100_001)}\r\n    paired:\r\n`;
    expect(reading(block)).toEqual(['3:5 block-style', '4:1 unreadable-lines', 1]);
    expect(read(`${comment}\n${journal}`).journal.pair.at).toMatchObject({ line: 2, column: 7 });
    const wrong = journal.replace('log:', `${comment}\nlog:`).replace('2026-02-01', 'x');
    expect(reading(wrong)).toEqual(['2:1 unreadable-lines', '4:12 date-shape', 0]);
  });

  it('has no directives behind its first key', () => {
    expect(read(journal.replace('log:', '% of eggs\nlog:')).found).toEqual(['2:9 unreadable-lines']);
  });

  it('may have percent signs and dashes in its text', () => {
    expect(reading('pair: LW-1\nspecies: a --- b\nlog:\n  - {date: 2026-02-01, courting: 50 %}\n')).toEqual([
      1,
    ]);
  });

  it('keeps both sides of a conflict that git left', () => {
    const conflict = `${journal}<<<<<<< HEAD\n  - {date: 2026-02-02, nest: building}\n=======\n  - {date: 2026-02-03, nest: lined}\n>>>>>>> shed\n`;
    expect(reading(conflict)).toEqual(['4:1 conflict-mark', 3]);
    expect(reading(`${conflict}  - {date: x}\n`)).toEqual(['4:1 conflict-mark', '9:12 date-shape', 3]);
  });

  it('with a line of signs by itself has no conflict: the line is told', () => {
    expect(reading(`${journal}=======\n  - {date: 2026-02-02, nest: building}\n`)).toEqual([
      '4:1 unreadable-lines',
      2,
    ]);
  });

  it('in which one side of a conflict was taken out already still has its other mark', () => {
    const half = `${journal}  - {date: 2026-02-02, nest: building}\n>>>>>>> shed\n`;
    expect(reading(half)).toEqual(['5:1 conflict-mark', 2]);
    expect(reading(half.replace('>>>', '=======\n>>>'))).toEqual(['6:1 conflict-mark', 2]);
    expect(read(half).findings[0]?.at.length).toBe(7);
    const base = `${journal}<<<<<<< HEAD\n  - {date: 2026-02-02, nest: building}\n||||||| before\n=======\n>>>>>>> shed\n`;
    expect(reading(base)).toEqual(['4:1 conflict-mark', 2]);
    const two = `${journal}<<<<<<< HEAD\n=======\n>>>>>>> shed\n  - {date: 2026-02-02, nest: building}\n<<<<<<< HEAD\n=======\n>>>>>>> shed\n`;
    expect(reading(two)).toEqual(['4:1 conflict-mark', '8:1 conflict-mark', 2]);
  });

  it('has its directives pointed at whole, also where comments stand before them', () => {
    const [directive] = read(`# ours\n\n%YAML 1.1\n---\n${journal}`).findings;
    expect(directive).toMatchObject({
      at: { line: 3, column: 1, length: 9 },
      args: { feature: 'directive' },
    });
    expect(reading(`%A\n%B\n---\n${journal}`)).toEqual(['1:1 yaml-feature', '2:1 yaml-feature', 1]);
  });

  it('that begins with a lost letter is told so at its first column', () => {
    const { findings } = read(`\ufffd: x\n${journal}`);
    expect(findings[0]).toMatchObject({ code: 'not-utf8', at: { line: 1, column: 1, length: 1 } });
  });

  it('that lost letters is read, and said once', () => {
    expect(reading(journal.replace('paired', 'courting: fr\ufffdhlich und m\ufffdde'))).toEqual([
      '3:36 not-utf8',
      1,
    ]);
  });
});
