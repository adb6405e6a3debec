import { describe, expect, it } from 'vitest';
import { readFile } from '../../../src/journal/record.ts';
import { read } from '../reading.ts';

/** What is found, and the dates of the entries that count. */
function reading(text: string) {
  const { found, entries } = read(text);
  return { found, days: entries.map(({ dateAt }) => dateAt.line) };
}

const HEAD = 'pair: LW-1\nlog:\n';

describe('a journal that is no YAML as a whole', () => {
  it('loses the entry that cannot be read, and no other', () => {
    const log =
      '  - {date: 2026-02-01, paired}\n  - {date: 2026-02-02, laid: [e1}\n  - {date: 2026-02-03, sitting}\n';
    expect(reading(HEAD + log)).toEqual({ found: ['4:33 unreadable-entry'], days: [3, 5] });
  });

  it.each(['lgo', 'x'])(
    'under the key `%s` names it, and each entry that cannot be read; the others count',
    (key) => {
      const log = `${key}:\n  - {date: 2026-02-01, paired}\n  - {date: 2026-02-02, laid: 1\n  - {date: 2026-02-03}}\n`;
      expect(reading(`pair: LW-1\n${log}`)).toEqual({
        found: ['2:1 unknown-key', '4:30 unreadable-entry', '5:23 unreadable-entry'],
        days: [3],
      });
      const apart = `${key}:\n  - {date: 2026-02-01, paired}\n    - {date: 2026-02-02, laid: 1}\n`;
      expect(reading(`pair: LW-1\n${apart}`).days).toEqual([3, 4]);
    },
  );

  it('with an entry that lacks its braces is answered with the whole line', () => {
    const { found, fixes } = read(`${HEAD}  - {date: 2026-02-01, paired}\n  - date: 2026-02-02, laid: 1\n`);
    expect(found).toEqual(['4:3 unreadable-entry']);
    expect(fixes[0]).toBe('write:\n- {date: 2026-02-02, laid: 1}');
  });

  it.each([
    ['-  date : 2026-02-02, laid: 1', '- {date: 2026-02-02, laid: 1}'],
    ['- date: 2026-02-02, lost: {clear: e1}, checked', '- {date: 2026-02-02, lost: {clear: e1}, checked}'],
  ])('also where more stands in it: `%s`', (line, meant) => {
    expect(read(`${HEAD}  ${line}\n`).fixes).toEqual([`write:\n${meant}`]);
  });

  it.each(['- date: 2026-02-02, courting: "song, laid: 1', '- date: 2026-02-02, {laid: 1}, laid: 2'])(
    'but not where braces alone do not help: `%s`',
    (line) => {
      const { found, fixes } = read(`${HEAD}  ${line}\n`);
      expect(found).toEqual(['3:11 unreadable-entry']);
      expect(fixes[0]).not.toContain('write:');
    },
  );

  it('with a stray key in its log keeps all of an entry over several lines behind it', () => {
    const log = '  - {date: 2026-02-01, paired}\nhousing: flight 2\n  - date: 2026-02-02\n    laid: 1\n';
    const { entries, journal } = read(HEAD + log);
    expect(entries.map(({ saw }) => saw.map(({ key }) => key))).toEqual([['paired'], ['laid']]);
    expect(journal.housing?.text).toBe('flight 2');
  });

  it('with entries behind two other keys has them in its log, not among the cocks', () => {
    const log =
      '  - {date: 2026-02-01, paired}\ncock: [A, B]\nhousing: flight 2\n  - {date: 2026-02-02, laid: 1}\n';
    const { entries, journal, found } = read(HEAD + log);
    expect([entries.length, found]).toEqual([2, []]);
    expect(journal.cock.map(({ text }) => text)).toEqual(['A', 'B']);
    const empty = read('pair: LW-1\nlog:\nhousing: flight 2\n  - {date: 2026-02-02, laid: 1}\n');
    expect([empty.entries.length, empty.found]).toEqual([1, []]);
  });

  it('under a comment and a key with its value, entries are in no log', () => {
    const text = `# mine\npair: LW-1\n  - {date: 2026-02-01, paired}\nlog:\n  - {date: 2026-02-02, laid: 1}\n`;
    expect(reading(text)).toEqual({ found: ['3:3 unreadable-lines'], days: [5] });
    expect(read(text).journal.pair.text).toBe('LW-1');
  });

  it('under a misspelt key with a comment behind it has its entries', () => {
    const log = 'logg: # 2026\n  - {date: 2026-02-01, paired}\n  - {date: 2026-02-02, laid: 1\n';
    expect(reading(`pair: LW-1\n${log}`)).toEqual({
      found: ['2:1 unknown-key', '4:30 unreadable-entry'],
      days: [3],
    });
  });

  it('with a stray key in its log keeps the entries behind it, wherever they are indented', () => {
    const log =
      '  - {date: 2026-02-01, paired}\nnotes: none\n  - {date: 2026-02-02}\n- {date: 2026-02-03, sitting}\n  - {date: 2026-02-04, paired}\n';
    expect(reading(HEAD + log)).toMatchObject({ days: [3, 5, 6, 7] });
    expect(read(HEAD + log).found).toContain('4:1 unknown-key');
    // Before any log they are in none.
    expect(read('pair: LW-1\nnotes: none\n  - {date: 2026-02-01, paired}\n').found).toContain(
      '3:3 unreadable-lines',
    );
  });

  it('whose only entry has no blank behind its dash is told so', () => {
    expect(read(`${HEAD}  -{date: 2026-02-01, laid: 1}\n`).found).toEqual(['3:4 unreadable-lines']);
  });

  it('with its keys behind the empty log has its entries in it, and names the one that breaks', () => {
    const text = 'log:\npair: LW-1\n  - {date: 2026-02-01, paired}\n  -\n {date: 2026-02-02, laid: 1.5}\n';
    expect(reading(text).days).toEqual([3]);
    expect(reading(text).found.map((one) => one.split(':')[0])).toContain('5');
    const stray = text.replace('log:', 'notes: none');
    expect(reading(stray).found).toContain('3:3 unreadable-lines');
  });

  it('names each line that was meant as an entry, whatever stands in place of its dash', () => {
    const log =
      '  - {date: 2026-02-01}\n  -{date: 2026-02-02}\n  {date: 2026-02-03}\n  –{date: 2026-02-04}\n';
    expect(read(HEAD + log).found.filter((one) => one.endsWith('unreadable-lines'))).toEqual([
      '4:4 unreadable-lines',
      '5:3 unreadable-lines',
      '6:3 unreadable-lines',
    ]);
    expect(read(HEAD + log).fixes.filter((fix) => fix?.startsWith('write:'))).toEqual([
      'write:\n- {date: 2026-02-02}',
      'write:\n- {date: 2026-02-03}',
      'write:\n- {date: 2026-02-04}',
    ]);
  });

  it('says why, as far as it can be told', () => {
    const why = (entry: string) => read(`${HEAD}  - ${entry}\n`).findings[0]?.args.why;
    expect(why('{date: 2026-02-01, courting: "song}')).toBe('quote-open');
    expect(why('{date: 2026-02-01, courting: "song" loud}')).toBe('text-behind');
    expect(why('{date: 2026-02-01, laid: 1}}')).toBe('closed-twice');
    expect(why('{date: 2026-02-01, , laid: 1}')).toBe('comma-twice');
    expect(read(`${HEAD}  - {date: 2026-02-01, paired}\n  -{date: 2026-02-02}\n`).findings[0]?.args.why).toBe(
      'no-blank',
    );
    expect(why('{date: 2026-02-01, laid: 1')).toBe('brace-open');
    expect(why('{date: 2026-02-01, laid: [e1}')).toBe('bracket-open');
    expect(why('{date: 2026-02-01, courting: song: loud}')).toBe('colon-in-text');
    expect(why('{date: 2026-02-01, courting: @song}')).toBe('reserved-sign');
    expect(why('{date: 2026-02-01, courting: "a\\qb"}')).toBe('backslash');
    expect(why('date: 2026-02-01\n   laid: 1\n  sitting: hen')).toBe('indent');
  });

  it('reads entries over several lines, each to its own end', () => {
    const log = '  - date: 2026-02-01\n    laid: [e1\n  - date: 2026-02-02\n    laid: 1\n';
    expect(reading(HEAD + log)).toMatchObject({ days: [5] });
    expect(read(HEAD + log).found[0]).toMatch(/unreadable-entry$/);
  });

  it('is the same with the line ends of another system', () => {
    const text = `${HEAD}  - {date: 2026-02-01, note: off: cold}\n  - date: 2026-02-02\n    note: "fine"\n    laid: [\n  - {date: 2026-02-03, sitting}\nx y\n`;
    const unix = read(text);
    const other = read(text.replaceAll('\n', '\r\n'));
    expect(other.findings).toEqual(unix.findings);
    expect(other.entries).toEqual(unix.entries);
    expect(unix.found).toHaveLength(3);
  });

  it('may have its log at the margin', () => {
    expect(
      reading(`${HEAD}- {date: 2026-02-01, laid: [}\n- {date: 2026-02-02, paired}\nhousing: flight 2\n`),
    ).toMatchObject({
      days: [4],
    });
  });

  it('reads an entry that stands too far left or right', () => {
    const log =
      '  - {date: 2026-02-01, paired}\n    - {date: 2026-02-02, nest: lined}\n - {date: 2026-02-03, sitting}\n';
    expect(reading(HEAD + log).days).toEqual([3, 4, 5]);
  });

  it('keeps an entry with rubbish behind it', () => {
    const log = '  - {date: 2026-02-01, paired}\nwhat is this\n  - {date: 2026-02-03, sitting}\n';
    expect(reading(HEAD + log)).toEqual({ found: ['4:1 unreadable-lines'], days: [3, 5] });
  });

  it('counts its log although the header cannot be read', () => {
    const { journal, found, entries } = read(
      'pair: LW-1\nspecies: "lavender\nhen: LW-2\nlog:\n  - {date: 2026-02-01, paired}\n',
    );
    expect(found).toEqual(['2:10 unreadable-lines']);
    expect(journal).toMatchObject({ pair: { text: 'LW-1' }, species: null, hen: [{ text: 'LW-2' }] });
    expect(entries).toHaveLength(1);
  });

  it('counts its header although the log cannot be read', () => {
    const { journal, found } = read('pair: LW-1\nlog: [\nhousing: flight 2\n');
    expect(found).toEqual(['2:6 unreadable-lines', '1:1 no-log'].sort());
    expect(journal.housing?.text).toBe('flight 2');
  });

  it('indented by tabs is read where that does no harm, and told once', () => {
    const log = '\t- {date: 2026-02-01, paired}\n\t- {date: 2026-02-02, nest: lined}\n';
    expect(reading(HEAD + log)).toEqual({ found: ['3:1 tab-indent'], days: [3, 4] });
  });

  it('with tabs inside of an entry loses that entry', () => {
    const { findings, entries } = read(
      `${HEAD}  - date: 2026-02-01\n\tlaid: 1\n  - {date: 2026-02-02, paired}\n`,
    );
    expect(findings).toMatchObject([
      { code: 'unreadable-entry', at: { line: 4, column: 1 }, args: { why: 'tab' } },
    ]);
    expect(entries).toHaveLength(1);
  });

  it('is offered no other line where the tab or the indentation is at fault', () => {
    for (const entry of ['date: 2026-02-01\n\tlaid: 1', 'date: 2026-02-01\n   laid: 1\n  sitting: hen'])
      expect(read(`${HEAD}  - ${entry}\n`).fixes.join()).not.toContain('write:');
  });

  it('is one finding where nothing at all can be read', () => {
    expect(read('[[[').found).toEqual(['1:3 unreadable-lines']);
    expect(read('- [x\n'.repeat(100)).found).toEqual(['1:1 not-a-mapping']);
    expect(read('x [\n'.repeat(100)).found).toEqual(['1:1 not-a-mapping']);
  });

  it('takes both logs where a merge left two', () => {
    expect(
      reading(`${HEAD}  - {date: 2026-02-01, paired}\nlog:\n  - {date: 2026-02-02, nest: lined}\n`),
    ).toEqual({
      found: ['4:1 second-log'],
      days: [3, 5],
    });
  });
});

describe('where it breaks', () => {
  const broken = '  - {date: 2026-02-01, laid: [}\n';
  const sound = '  - {date: 2026-02-02, paired}\n';
  const told = (text: string) => {
    const { findings, entries } = read(text);
    return {
      found: findings.map(({ code, at, args }) => `${at.line}:${at.column}+${at.length} ${args.why ?? code}`),
      days: entries.map(({ dateAt }) => dateAt.line),
    };
  };

  it('may be a file that begins with a comment and its log', () => {
    expect(told(`# mine\n\nlog:\n${broken}${sound}pair: LW-1\n`)).toEqual({
      found: ['4:31+1 bracket-open'],
      days: [5],
    });
  });

  it('may be entries before the first key: each is named, and why it counts for nothing', () => {
    const text = `- {date: 2026-02-01, paired}\n- {date: 2026-02-02, laid: [}\n${HEAD}${sound}`;
    expect(told(text)).toEqual({ found: ['1:1+1 outside-log', '2:29+1 bracket-open'], days: [5] });
    const block = `- date: 2026-02-01\n  laid: 1\n${HEAD}${sound}`;
    expect(told(block)).toEqual({ found: ['1:1+1 outside-log'], days: [5] });
  });

  it('may be a file that is indented as a whole: keys are still pointed at', () => {
    const text =
      '  pair: LW-1\n  log:\n    - {date: 2026-02-01, laid: [}\n  log:\n    - {date: 2026-02-02, paired}\n';
    expect(told(text)).toEqual({ found: ['3:33+1 bracket-open', '4:3+3 second-log'], days: [5] });
  });

  it('may be words before the first entry; a comment or a blank line there is none', () => {
    expect(told(`${HEAD}  what is this\n${broken}${sound}`)).toEqual({
      found: ['2:1+4 other', '4:31+1 bracket-open'],
      days: [5],
    });
    expect(told(`${HEAD}\n  # spring\n${broken}${sound}`)).toEqual({
      found: ['5:31+1 bracket-open'],
      days: [6],
    });
    expect(told(`pair: LW-1\nlog: spring\n${broken}${sound}`).found).toEqual([
      '2:1+11 other',
      '3:31+1 bracket-open',
    ]);
    expect(told(`pair: LW-1\nlog: spring\nhousing: flight 2\n${sound}`)).toEqual({
      found: ['2:6+6 log-no-list', '4:3+1 outside-log'],
      days: [],
    });
    expect(told(`pair: LW-1\nlog: # spring\n${broken}${sound}`).found).toEqual(['3:31+1 bracket-open']);
  });

  it('may be behind an entry: what is pointed at is no comment', () => {
    expect(told(`${HEAD}  - {date: 2026-02-03, sitting}\n\n  # fine\nwhat is this\n${sound}`)).toEqual({
      found: ['6:1+12 other'],
      days: [3, 7],
    });
    expect(told(`${HEAD}${broken}${sound}  # why\n    # not\n\n  - {date: 2026-02-03, sitting}\n`)).toEqual({
      found: ['3:31+1 bracket-open'],
      days: [4, 8],
    });
    expect(told(`${HEAD}  - {date: 2026-02-01, note: off: cold}\nwhat\n${sound}`)).toEqual({
      found: ['3:30+9 unquoted-note', '4:1+4 other'],
      days: [3, 5],
    });
  });

  it('may be a tab: before the dash of a one-line entry it does no harm', () => {
    const tabs = '  \t- {date: 2026-02-01, paired}\n\t- {date: 2026-02-03, laid: [}\n';
    expect(told(`${HEAD}${tabs}${sound}`)).toEqual({
      found: ['3:3+1 tab-indent', '4:2+1 tab'],
      days: [3, 5],
    });
    const several = '\t- date: 2026-02-01\n   paired:\n   note: quiet\n';
    expect(told(`${HEAD}${several}${broken}`)).toEqual({
      found: ['3:1+1 tab-indent', '3:4+16 block-style', '6:31+1 bracket-open'],
      days: [3],
    });
    const columns = `  \t-  {date: 2026-02-01, clutch: x, paired}\n${broken}`;
    expect(told(`${HEAD}${columns}`).found).toEqual([
      '3:3+1 tab-indent',
      '3:34+1 not-whole',
      '4:31+1 bracket-open',
    ]);
    expect(told(`${HEAD}\t- {date: 2026-02-01, laid: [}\n${sound}`).found).toEqual(['3:2+1 tab']);
    expect(told(`${HEAD}\t- date: 2026-02-01\n\t  paired:\n${sound}`)).toEqual({
      found: ['3:2+1 tab'],
      days: [5],
    });
  });

  it('may be behind a broken entry, which is told once with all that stands below it', () => {
    expect(told(`${HEAD}  - {date: 2026-02-03, laid: [}\n    what\n\n    is this\n${sound}`)).toEqual({
      found: ['3:31+1 bracket-open'],
      days: [7],
    });
    expect(told(`${HEAD}  -  {date: 2026-02-03, sitting}\nwhat\n\nis this\n${sound}`)).toEqual({
      found: ['4:1+4 other'],
      days: [3, 7],
    });
  });

  it('is not shown at the apostrophe of a note', () => {
    expect(told(`${HEAD}  - {date: 2026-02-01, note: "the hen's", laid: 1}}\n${sound}`).found).toEqual([
      '3:51+1 closed-twice',
    ]);
  });

  it('may be a short note of a reserved sign: all below it keeps its place', () => {
    expect(told(`${HEAD}  - date: 2026-02-01\n    note: @5\n    clutch: x\n    laid: 1\n`).found).toContain(
      '5:13+1 not-whole',
    );
  });

  it('may be a note over two lines, which takes no key and no entry along', () => {
    const text = `${HEAD}  - date: 2026-02-01\n    note: this\nhousing is no key\n${sound}species: canary\n`;
    expect(told(text)).toEqual({ found: ['5:1+1 text-behind'], days: [6] });
    expect(read(text).journal.species?.text).toBe('canary');
  });

  it('may be behind the log: keys there are keys, other words are not', () => {
    const text = `${HEAD}${broken}housing: flight 2\nspecies: canary\nwhat is this\n`;
    expect(told(text).found).toEqual(['3:31+1 bracket-open', '6:1+12 other']);
    expect(read(text).journal).toMatchObject({ housing: { text: 'flight 2' }, species: { text: 'canary' } });
  });

  it('may be in a file with quoted keys', () => {
    const text = `'pair': LW-1\n"log" :\n${broken}${sound}`;
    expect(told(text)).toEqual({ found: ['3:31+1 bracket-open'], days: [4] });
    expect(read(text).journal.pair.text).toBe('LW-1');
  });
});

describe('a bird list that is no YAML as a whole', () => {
  it.each([
    ['  -  {id: A, sex: hen', '2:21 unreadable-lines'],
    ['  - "id: A', '2:5 unreadable-lines'],
  ])('tells of a bird that cannot be read, `%s`, and not what it lacks', (line, found) => {
    const { says, findings } = readFile('birds.yaml', `birds:\n${line}\n  - {id: B}\n`);
    expect(findings.map(({ code, at }) => `${at.line}:${at.column} ${code}`)).toEqual([found]);
    expect(says.birds?.map(({ id }) => id.text)).toEqual(['B']);
  });

  it('loses one line of one bird', () => {
    const text =
      'birds:\n  - id: A\n    ring: "LW 1\n    log:\n      - {date: 2026-02-01, arrived}\n      - {date: 2026-02-02, weighed: [}\n  - {id: B, sex: hen}\n';
    const { says, findings } = readFile('birds.yaml', text);
    expect(says.birds?.map(({ id, sex, log }) => [id.text, sex, log.length])).toEqual([
      ['A', null, 1],
      ['B', 'hen', 0],
    ]);
    expect(findings.map(({ code, at }) => `${at.line} ${code}`)).toEqual([
      '3 unreadable-lines',
      '6 unreadable-entry',
    ]);
  });
});
