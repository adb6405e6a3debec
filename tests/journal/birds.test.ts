import { describe, expect, it } from 'vitest';
import { parseDay } from '../../src/days.ts';
import { kindOf } from '../../src/findings/codes.ts';
import { readFile } from '../../src/journal/record.ts';
import { read } from './reading.ts';

function birds(text: string) {
  const { says, findings } = readFile('birds.yaml', text);
  return {
    birds: says.birds ?? [],
    found: findings.map(({ code, at }) => `${at.line}:${at.column} ${code}`),
  };
}

describe('the bird list', () => {
  it('says where each bird comes from, and its later life', () => {
    const { birds: list, found } = birds(
      'birds:\n  - {id: A, ring: 014, species: canary, sex: cock, hatched: 2024-05-17, sire: B, dam: [C, D], origin: swapped, owner: mine}\n' +
        '  - id: E\n    is: LW-3/2/c1\n    log:\n      - {date: 2026-03-01, time: 07:30, weighed: 8.4, note: "fit"}\n',
    );
    expect(found).toEqual([]);
    expect(list[0]).toMatchObject({
      at: { line: 2, column: 5 },
      id: { text: 'A' },
      ring: { text: '014' },
      sex: 'cock',
      hatched: { from: parseDay('2024-05-17'), to: parseDay('2024-05-17') },
      sire: [{ text: 'B' }],
      dam: [{ text: 'C' }, { text: 'D' }],
      owner: { text: 'mine' },
      is: null,
      log: [],
    });
    expect(list[1]).toMatchObject({
      id: { text: 'E' },
      is: { text: 'LW-3/2/c1' },
      log: [{ time: 450, note: { text: 'fit' }, saw: [{ key: 'weighed', value: 8.4 }] }],
    });
  });

  it('takes a sex that is unknown for none said', () => {
    const { birds: list, found } = birds('birds: [{id: A, sex: unknown}, {id: B}, {id: C, sex: hen}]');
    expect(found).toEqual([]);
    expect(list.map(({ sex }) => sex)).toEqual([null, null, 'hen']);
  });

  it('names what is no bird once, and keeps the others', () => {
    const { birds: list, found } = birds(
      'birds:\n  - *a\n  - {sex: hen}\n  - {id: [x], sex: hen}\n  - {id: B}\n',
    );
    expect(found).toEqual(['2:5 yaml-feature', '3:5 no-id', '4:10 wrong-value']);
    expect(list.map(({ id }) => id.text)).toEqual(['B']);
  });

  it('asks whether the list was meant by another word', () => {
    const { findings } = readFile('birds.yaml', 'bird: [{id: A}]\n');
    expect(findings.map((finding) => kindOf(finding).hint(finding.args))).toContain('did you mean `birds`?');
  });

  it('is one: of another list beside it no bird is taken, and that is said', () => {
    const { says, findings } = readFile('birds.yaml', 'wanted: [{id: B}]\nbirds: [{id: A}]\n');
    expect(says.birds?.map(({ id }) => id.text)).toEqual(['A']);
    expect(findings.map(({ code, args }) => [code, args.keys])).toEqual([['unknown-key', 'birds']]);
  });

  it('does not ask for the id of a bird of which no word could be read', () => {
    const long = `birds:\n  - {id: A, origin: ${'x'.repeat(100_000)}}\n  - {id: B}\n`;
    expect(birds(long)).toMatchObject({ birds: [{ id: { text: 'B' } }], found: ['2:3 unreadable-lines'] });
  });

  it('knows a bird without an id by the chick that it is, or by its ring', () => {
    expect(birds('birds: [{is: LW-3/2/c1}, {ring: 014}]').birds.map(({ id }) => id.text)).toEqual([
      'LW-3/2/c1',
      '014',
    ]);
  });

  it.each([
    ['birds: [{sex: hen}]', '1:9 no-id'],
    ['birds: [{id: a/b}]', '1:14 bad-name'],
    ['birds: [LW-1]', '1:9 not-a-bird'],
    ['birds: {id: A}', '1:8 birds-no-list'],
    ['brids: []', '1:1 unknown-key'],
    ['birds: [{id: A, sex: male}]', '1:22 unknown-word'],
    ['birds: [{id: A, hatched: some day}]', '1:26 date-shape'],
    ['birds: [{id: A, rung: 14}]', '1:17 unknown-key'],
    ['birds: [{id: A, log: {x: 1}}]', '1:22 log-no-list'],
    ['birds: [{id: A, log: [{date: 2026-03-01, weigthed: 8}]}]', '1:42 unknown-key'],
  ])('%s is one finding', (text, finding) => {
    expect(birds(text).found).toEqual([finding]);
  });

  it('loses a bird that cannot be named, and no other', () => {
    expect(birds('birds: [{sex: hen}, {id: B}]').birds).toHaveLength(1);
  });

  it('may be empty', () => {
    for (const text of ['birds:\n', 'birds: []\n']) expect(birds(text)).toEqual({ birds: [], found: [] });
  });
});

it('entries of a bird are its log, however that is spelt', () => {
  const { birds: list, found } = birds(
    'birds:\n  - id: A\n    lock:\n      - {date: 2026-03-01, arrived: cage 1}\n  - {id: B}\n',
  );
  expect(found).toEqual(['3:5 unknown-key']);
  expect(list.map(({ log }) => log.length)).toEqual([1, 0]);
});

describe('what is typed otherwise of a bird', () => {
  const fix = (text: string) =>
    readFile('birds.yaml', text).findings.map((finding) => kindOf(finding).hint(finding.args))[0];
  const inLog = (entry: string) => fix(`birds: [{id: A, log: [{date: 2026-03-01, ${entry}}]}]`);

  it.each([
    ['sold: to a friend', '`gone: sold, note: "to a friend"`'],
    ['escaped', '`gone: escaped`'],
    ['gone: sold to a friend', 'did you mean `sold`?'],
    ['gone: {sold: yes}', 'such as `gone: sold`'],
    ['sexed: DNA hen', 'did you mean `hen`?'],
    ['moved to flight 3', 'did you mean `moved: flight 3`?'],
    ['quarantine: 30 days', 'write 30'],
    ['quarantine: 4 weeks', 'write 28'],
    ['quarantine: until 2026-04-01', 'write `{until: 2026-04-01}`'],
    ['quarantine: over', 'write the number alone: 30'],
    ['weighed: 8.4 g', 'write 8.4'],
  ])('in its log, %s', (entry, meant) => {
    expect(inLog(entry)).toContain(meant);
  });

  it.each([
    ['died: 2026-05-01', '`- {date: 2026-05-01, died}`'],
    ['sold: 1.5.2026', '`- {date: 2026-05-01, gone: sold}`'],
    ['sold: to a friend', '`- {date: …, gone: sold, note: "to a friend"}`'],
    ['sold: yes', '`- {date: …, gone: sold}`'],
    ['bought: 2026-05-01', '`- {date: 2026-05-01, arrived}`'],
    ['weight: 8.4', '`- {date: …, weighed: 8.4}`'],
    ['housing: flight 2', '`- {date: …, moved: flight 2}`'],
    ['note: shy', '`- {date: …, note: "shy"}`'],
    ['note: 2026-05-01 shy', '`- {date: …, note: "2026-05-01 shy"}`'],
    // A day is no cause of death, whichever of two was meant.
    ['died: 5/1/2026', '`- {date: …, died}`'],
    ['died: 2026-05-01 cold', '`- {date: …, died: 2026-05-01 cold}`'],
    ['gone: sold', '`- {date: …, gone: sold}`'],
  ])('above its log, %s belongs into it', (said, entry) => {
    expect(fix(`birds: [{id: A, ${said}}]`)).toContain(`belongs in the bird’s log, under its day: ${entry}`);
  });

  it('a word of no log is answered with what a bird has, as is a day of which nobody knows what happened', () => {
    for (const said of ['colour: red', 'checked: 2026-05-01'])
      expect(fix(`birds: [{id: A, ${said}}]`), said).toMatch(/^there are id, ring, /);
  });

  it('what belongs into its log is told once, and what is more than words is told what a bird has', () => {
    const text = 'birds:\n  - {id: A, died: 2026-05-01}\n  - {id: B, died: [cold]}\n';
    const { found, fixes } = read(text, 'birds.yaml');
    expect(found).toEqual(['2:13 unknown-key', '3:13 unknown-key']);
    expect(fixes[1]).toMatch(/^there are id, ring, /);
  });

  it('a log of one entry without its dash', () => {
    expect(fix('birds: [{id: A, log: {date: 2026-04-01, moved: flight 9}}]')).toContain(
      '- {date: 2026-04-01, moved: flight 9}',
    );
  });

  it('the whole list under another word', () => {
    expect(birds('stock: [{id: A}]').birds).toHaveLength(1);
    expect(birds('flock: [{id: A}]').birds).toHaveLength(1);
  });
});
