import { describe, expect, it } from 'vitest';
import { kindOf } from '../../../src/findings/codes.ts';
import { readFile } from '../../../src/journal/record.ts';
import { mendedLine } from '../../../src/journal/text/mended.ts';

const JOURNAL = 'pair: LW-1\nlog:\n  - {date: 2026-03-01, paired}\n';

function read(path: string, text: string) {
  const { findings, says } = readFile(path, text);
  const [finding] = findings;
  const fix = finding === undefined ? null : kindOf(finding).hint(finding.args);
  const said = finding === undefined ? '' : kindOf(finding).text(finding.args);
  return { codes: findings.map(({ code }) => code), fix, said, says };
}

describe('a line that cannot be read is answered with the line that was meant', () => {
  it.each([
    ['a brace left open', '- {date: 2026-03-02, laid: 1', '- {date: 2026-03-02, laid: 1}'],
    [
      'a brace left open inside',
      '- {date: 2026-03-02, lost: {clear: e1, note: "cold"}',
      '- {date: 2026-03-02, lost: {clear: e1}, note: "cold"}',
    ],
    ['a bracket left open', '- {date: 2026-03-02, laid: [e1, e2}', '- {date: 2026-03-02, laid: [e1, e2]}'],
    ['a brace too many', '- {date: 2026-03-02, laid: 1}}', '- {date: 2026-03-02, laid: 1}'],
    ['a bracket too many', '- {date: 2026-03-02, laid: [e1, e2]}]', '- {date: 2026-03-02, laid: [e1, e2]}'],
    ['a comma too many', '- {date: 2026-03-02,, laid: 1}', '- {date: 2026-03-02, laid: 1}'],
    ['a dash without its blank', '-{date: 2026-03-02, laid: 1}', '- {date: 2026-03-02, laid: 1}'],
    ['a comma behind it', '- {date: 2026-03-02, checked},', '- {date: 2026-03-02, checked}'],
    ['a full stop behind it, apart', '- {date: 2026-03-02, checked} .', '- {date: 2026-03-02, checked}'],
    ['its end cut off behind a comma', '- {date: 2026-03-02, laid: 1,', '- {date: 2026-03-02, laid: 1}'],
    ['its end cut off', '- {date: 2026-03-02, laid: [e1, e2', '- {date: 2026-03-02, laid: [e1, e2]}'],
    [
      'both braces cut off',
      '- {date: 2026-03-02, lost: {clear: e1',
      '- {date: 2026-03-02, lost: {clear: e1}}',
    ],
    ['three commas', '- {date: 2026-03-02, , , laid: 1}', '- {date: 2026-03-02, laid: 1}'],
    ['its last words cut off', '- {date: 2026-03-02, note: "quiet', '- {date: 2026-03-02, note: "quiet"}'],
    ['round brackets', '- (date: 2026-03-02, laid: 1)', '- {date: 2026-03-02, laid: 1}'],
    [
      'semicolons for commas',
      '- {date: 2026-03-02, laid: 1; sitting: hen;nest: lined}',
      '- {date: 2026-03-02, laid: 1, sitting: hen, nest: lined}',
    ],
    [
      'words close behind it',
      '- {date: 2026-03-02, laid: 1}so far "fine"',
      '- {date: 2026-03-02, laid: 1, note: "so far \\"fine\\""}',
    ],
    [
      'words behind it, and a brace before them',
      '- {date: 2026-03-02, lost: {clear: e1}, checked} looked fine',
      '- {date: 2026-03-02, lost: {clear: e1}, checked, note: "looked fine"}',
    ],
    [
      'words behind it, with what was said',
      '- {date: 2026-03-02, laid: 1} he said \\"fine\\"',
      '- {date: 2026-03-02, laid: 1, note: "he said \\"fine\\""}',
    ],
    ['a full stop behind it', '- {date: 2026-03-02, checked}.', '- {date: 2026-03-02, checked}'],
    ['no comma behind the date', '- {date: 2026-03-02 laid: 1}', '- {date: 2026-03-02, laid: 1}'],
    ['a full stop behind the date', '- {date: 2026-03-02. laid: 1}', '- {date: 2026-03-02, laid: 1}'],
    ['a colon behind the date', '- {date: 2026-03-02: checked}', '- {date: 2026-03-02, checked}'],
    ['no dash', '{date: 2026-03-02, laid: 1}', '- {date: 2026-03-02, laid: 1}'],
    ['a quote left open', '- {date: 2026-03-02, courting: "song}', '- {date: 2026-03-02, courting: song}'],
    [
      'words behind it',
      '- {date: 2026-03-02, laid: 1} looked fine',
      '- {date: 2026-03-02, laid: 1, note: "looked fine"}',
    ],
  ])('%s', (_, line, meant) => {
    const { codes, fix } = read('pairs/LW-1.yaml', `${JOURNAL}  ${line}\n`);
    expect(codes).toHaveLength(1);
    expect(fix).toBe(`write:\n${meant}`);
    expect(read('pairs/LW-1.yaml', `${JOURNAL}  ${meant}\n`).codes).toEqual([]);
  });

  it('not where only another place would help', () => {
    const { fix } = read('pairs/LW-1.yaml', 'pair: "LW-1\n- {date: 2026-03-02, laid: 1}\n');
    expect(fix).not.toContain('write:');
  });
});

describe('what cannot be read is told in the words of its file', () => {
  it('a bird whose brace is left open is told so, and the birds around it count', () => {
    const { fix, said, says } = read(
      'birds.yaml',
      'birds:\n  - {id: A-1, sex: cock\n  - {id: A-2, sex: hen}\n  - id: A-3\n',
    );
    expect(said).toBe('this cannot be read: a { is never closed');
    expect(fix).toBe('write:\n- {id: A-1, sex: cock}');
    expect(says.birds?.map(({ id }) => id.text)).toEqual(['A-2', 'A-3']);
  });

  it.each([
    ['-{', /a blank is missing/],
    ['-   {', /a \{ is never closed/],
  ])('nor is it another where its dash stands otherwise: `%s`', (dash, why) => {
    const { codes, fix, said } = read(
      'birds.yaml',
      `birds:\n  - {id: A-2}\n  ${dash}id: A-1, sex: cock\n  - id: A-3\n`,
    );
    expect(codes).toEqual(['unreadable-lines']);
    expect(said).toMatch(why);
    expect(fix).toBe('write:\n- {id: A-1, sex: cock}');
  });

  it('a colon in the text of a bird gets its quotes', () => {
    const { fix, says } = read('birds.yaml', 'birds:\n  - id: A-1\n    origin: bought: from a friend\n');
    expect(fix).toBe('write:\norigin: "bought: from a friend"');
    expect(says.birds).toHaveLength(1);
  });

  it.each([
    ['birds.yaml', 'birds:\n  - id: A-1\n    two: [hens\n', /one bird a line|close the list/],
    ['nestlog.yaml', 'room: the birdroom\nno colon here\n', /one key a line, such as `room: the birdroom`/],
    ['species/x.yaml', 'species: canary\nsome words\n', /such as `incubation: 12-14`/],
  ])('%s', (path, text, words) => {
    expect(read(path, text).fix).toMatch(words);
    expect(read(path, text).fix).not.toContain('date');
  });
});

it('a bird on one line without braces is answered with the bird that was meant, not with an id of two words', () => {
  const { fix } = read('birds.yaml', 'birds:\n  - id: LW-20-13, sex: hen\n');
  expect(fix).toBe('write:\n- {id: LW-20-13, sex: hen}');
  const { fix: text } = read('birds.yaml', 'birds:\n  - id: LW-20-13\n    origin: swapped: two for one\n');
  expect(text).toContain('origin: "swapped: two for one"');
});

describe('of a line by itself', () => {
  it.each([
    [
      'a remark behind it is no part of it',
      '- {date: 2026-03-02, laid: 1 # at dusk',
      '- {date: 2026-03-02, laid: 1}',
    ],
    [
      'nor are the blanks before it',
      '- {date: 2026-03-02, laid: 1},   # so far',
      '- {date: 2026-03-02, laid: 1}',
    ],
    ['nor one behind a tab', '{date: 2026-03-02, laid: 1\t#dusk', '- {date: 2026-03-02, laid: 1}'],
    ['a sign in a word begins none', '{date: 2026-03-02, food: mix#4', '- {date: 2026-03-02, food: "mix#4"}'],
    [
      'nor one in quotes',
      '- {date: 2026-03-02, laid: 1, note: "mix #4"',
      '- {date: 2026-03-02, laid: 1, note: "mix #4"}',
    ],
    ['a routine has its braces', '- name: water, every: 2', '- {name: water, every: 2}'],
    ['its dash is only the first', 'name: dust - fresh, every: 2', '- {name: "dust - fresh", every: 2}'],
    ['whatever blanks there are', '-  id : A-1, sex: hen', '- {id: A-1, sex: hen}'],
    ['a key that only ends as an id does begins no bird', 'ring-id: 4, sex: hen', 'ring-id: "4, sex: hen"'],
    ['a text with a colon has its quotes', 'origin: swapped: two for one', 'origin: "swapped: two for one"'],
  ])('%s', (_, line, meant) => {
    expect(mendedLine(line)).toBe(meant);
  });

  it.each([
    ['several lines', '- {date: 2026-03-02, laid: 1\n  note: "x"'],
    ['a story', `- {date: 2026-03-02, laid: 1, note: "${'so '.repeat(140)}`],
    ['what is no list', 'some words'],
    ['a key with its text', 'origin: a friend'],
    ['an id alone', 'id: A-1'],
    ['a brace in the wrong place', '- {date: 2026-03-02, }laid: 1, checked'],
    ['a sign before a key', '- {date: 2026-03-02, ;laid: 1'],
    ['a quote in a key', '- {date: 2026-03-02, la"id: 1'],
    ['what journals do not use', '- {date: 2026-03-02, laid: &first 1'],
  ])('nothing is made of %s', (_, line) => {
    expect(mendedLine(line)).toBe('');
  });
});
