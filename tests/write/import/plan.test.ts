import { describe, expect, test } from 'vitest';
import { logs, plan, problems } from './importing.ts';

const clutches = `
  rows: clutches
  pair: <Pair>
  species: <Species>
  log:
    - {date: <Laid>, laid: <Eggs>}
    - {date: <Sitting>, sitting}
    - {date: <Hatched>, hatched: <Chicks>, note: <Notes>}
    - {date: <Hatched> + 4, lost: <Eggs> - <Chicks>}
`;

const heading = 'Pair,Species,Laid,Eggs,Sitting,Hatched,Chicks,Notes';

const table = `
  ${heading}
  LW-1,lavender waxbill,2024-03-04,4,2024-03-07,2024-03-19,3,"two, then one"
  LW-1,lavender waxbill,2024-05-20,5,2024-05-24,,,
  FF-1,red-billed firefinch,2024-04-01,1,2024-04-04,,,
`;

describe('one row a clutch', () => {
  test('becomes one journal a pair, one line an entry, in the order in which it happened', () => {
    expect(plan(table, clutches).journals[0]?.text).toBe(
      `# yaml-language-server: $schema=../.nestlog/pair.schema.json
# From old.csv, imported on 2026-06-01.
pair: LW-1
species: lavender waxbill
log:
  - {date: 2024-03-04, clutch: 1, laid: 4}
  - {date: 2024-03-07, clutch: 1, sitting}
  - {date: 2024-03-19, clutch: 1, hatched: 3, note: "two, then one"}
  - {date: 2024-03-23, clutch: 1, lost: 1, note: "date assumed: Hatched + 4 d"}
  - {date: 2024-05-20, clutch: 2, laid: 5}
  - {date: 2024-05-24, clutch: 2, sitting}
`,
    );
  });

  test('a row of which nothing is known but the eggs is written as far as it goes', () => {
    expect(logs(table, clutches)['FF-1']).toEqual([
      '{date: 2024-04-01, clutch: 1, laid: 1}',
      '{date: 2024-04-04, clutch: 1, sitting}',
    ]);
  });

  test('what is counted from another date says so, and is told in numbers', () => {
    expect(plan(table, clutches).journals.map(({ entries, assumed }) => [entries, assumed])).toEqual([
      [6, 1],
      [2, 0],
    ]);
  });

  test('a 0 is no observation, and is told', () => {
    const row = `${heading}\nLW-1,lavender waxbill,2024-03-04,4,2024-03-07,2024-03-19,0,\n`;
    expect(logs(row, clutches)['LW-1']?.slice(2)).toEqual([
      '{date: 2024-03-23, clutch: 1, lost: 4, note: "date assumed: Hatched + 4 d"}',
    ]);
    expect([...plan(row, clutches).zeros]).toEqual([['hatched', 1]]);
  });

  test('columns that nothing is read from are told', () => {
    expect(plan('Pair,Laid,Eggs,Weather\nA-1,2024-03-04,4,mild\n', few).unread).toEqual(['Weather']);
  });
});

const few = `
  rows: clutches
  pair: <Pair>
  log:
    - {date: <Laid>, laid: <Eggs>}
`;

describe('one row an event', () => {
  const events = `
    rows: events
    pair: <pair>
    skip: {what: [weather]}
    log:
      - {when: {what: [egg, eggs]}, date: <date>, laid: <number>}
      - {when: {what: sits}, date: <date>, sitting, note: <remarks>}
      - {when: {what: lamp}, date: <date>, candled: {fertile: <number>, clear: <other>}}
      - {when: {what: hatch}, date: <date>, hatched: <number>}
  `;
  const rows = `
    date,pair,what,number,other,remarks
    2024-03-04,LW-1,Egg,1,,
    2024-03-05,LW-1,eggs,2,,
    2024-03-06,LW-1,weather,,,frost
    2024-03-07,LW-1,sits,,,all night
    2024-03-13,LW-1,lamp,3,0,
    2024-03-19,LW-1,hatch,3,,
  `;

  test('becomes an entry each, whatever the capitals; the lamp may show none', () => {
    expect(logs(rows, events)['LW-1']).toEqual([
      '{date: 2024-03-04, laid: 1}',
      '{date: 2024-03-05, laid: 2}',
      '{date: 2024-03-07, sitting, note: "all night"}',
      '{date: 2024-03-13, candled: {fertile: 3, clear: 0}}',
      '{date: 2024-03-19, hatched: 3}',
    ]);
    expect(plan(rows, events).skipped).toBe(1);
  });

  test('an event that the mapping does not know is named by its row', () => {
    const more = `${rows}2024-03-20,LW-1,hached,1,,\n    2024-03-21,LW-1,,1,,\n`;
    expect(problems(more, events)).toEqual([
      'old.csv row 8 what: the mapping does not say what `hached` means',
      'old.csv row 9 what: says nothing',
    ]);
  });
});

describe('nothing is written as long as anything is unclear:', () => {
  const broken = (row: string) => problems(`${heading}\n${row}\n`, clutches);

  test('a date that is none, one that the calendar lacks, one that has lost its format', () => {
    expect(
      problems(
        `${heading}
A-1,zebra finch,spring,4,,,,
A-2,zebra finch,2024-02-30,4,,,,
A-3,zebra finch,45355,4,,,,
`,
        clutches,
      ),
    ).toEqual([
      'old.csv row 2 Laid: `spring` is no date',
      'old.csv row 3 Laid: the calendar has no day `2024-02-30`',
      "old.csv row 4 Laid: 45355 looks like a spreadsheet's number of a day: 2024-03-04, or 2028-03-05 in a file from an old Mac",
    ]);
  });

  test('something seen on no known day', () => {
    expect(broken('A-1,zebra finch,2024-03-04,4,,,3,')).toEqual([
      'old.csv row 2 Hatched: no date for `hatched`',
      'old.csv row 2 Hatched: no date for `lost`',
    ]);
    expect(broken('A-1,zebra finch,2024-03-04,4,,,,all fine')).toEqual([
      'old.csv row 2 Hatched: no date for `all fine`',
    ]);
  });

  test('more young than eggs', () => {
    expect(broken('A-1,zebra finch,2024-03-04,3,2024-03-06,2024-03-19,5,')).toEqual([
      'old.csv row 2 Eggs: <Eggs> - <Chicks> is -2',
    ]);
  });

  test('what the room itself would call an error', () => {
    expect(broken('A-1,zebra finch,2024-03-04,many,,,,')).toHaveLength(1);
    expect(broken('A-1,zebra finch,2026-06-02,4,,,,')[0]).toMatch(/^old\.csv row 2: A-1: .*2026-06-02/);
    expect(broken('all,zebra finch,2024-03-04,4,,,,')[0]).toMatch(
      /^old\.csv row 2 Pair: all: `all` cannot be an id/,
    );
  });

  test('a row without a pair, a row without anything', () => {
    expect(broken(',zebra finch,2024-03-04,4,,,,')).toEqual(['old.csv row 2 Pair: no pair']);
    expect(broken('A-1,zebra finch,,,,,,')).toEqual(['old.csv row 2: nothing of this row would be written']);
  });

  test('a pair that is two species', () => {
    const rows = `${heading}\nA-1,zebra finch,2024-03-04,4,,,,\nA-1,star finch,2024-05-04,4,,,,\n`;
    expect(problems(rows, clutches)).toEqual([
      'old.csv row 3: species of A-1 is `star finch` here and `zebra finch` in row 2',
    ]);
  });

  test('a pair that has a journal, wherever it lies and whatever its file is called', () => {
    const journal = 'pair: LW-1\nspecies: lavender waxbill\nlog: []\n';
    expect(problems(table, clutches, { existing: { 'pairs/waxbills/old.yaml': journal } })).toEqual([
      'old.csv row 2: LW-1 has a journal already, pairs/waxbills/old.yaml; it is never overwritten',
    ]);
    expect(
      problems(table, clutches, { existing: { 'pairs/lw-1.yaml': journal.replace('LW-1', 'X-9') } }),
    ).toEqual(['old.csv row 2: LW-1 has a journal already, pairs/lw-1.yaml; it is never overwritten']);
  });
});

test('a species of which there is no profile is a hint, said once', () => {
  const rows = `${heading}\nA-1,grey phoenix,2024-03-04,4,,,,\nA-2,grey phoenix,2024-03-04,4,,,,\n`;
  const { hints, problems: none } = plan(rows, clutches);
  expect(none).toEqual([]);
  expect(hints).toEqual([
    { row: 2, times: 2, text: expect.stringMatching(/^no profile for the species `grey phoenix`/) },
  ]);
});

test('--into puts the journals into a folder below pairs/', () => {
  const { journals } = plan(table, clutches, { into: 'old/2024' });
  expect(journals.map(({ path }) => path)).toEqual(['pairs/old/2024/LW-1.yaml', 'pairs/old/2024/FF-1.yaml']);
  expect(journals[0]?.text).toMatch(/^# yaml-language-server: \$schema=\.\.\/\.\.\/\.\.\/\.nestlog\//);
});

test('words of the table are those of journals, and cells that say nothing are empty', () => {
  const mapping = `
    rows: clutches
    nothing: [NA, "-"]
    words: {Kind: {lw: lavender waxbill}}
    pair: <Pair>
    species: <Kind>
    log:
      - {date: <Laid>, laid: <Eggs>, note: <Notes>}
  `;
  const { journals } = plan('Pair,Kind,Laid,Eggs,Notes\nA-1,LW,2024-03-04,4,-\n', mapping);
  expect(journals[0]?.text).toContain('species: lavender waxbill\n');
  expect(journals[0]?.text).toContain('  - {date: 2024-03-04, clutch: 1, laid: 4}\n');
});

describe('what a table cannot mean is never made into a journal', () => {
  const twice = `
    rows: clutches
    pair: <Pair>
    species: star finch
    log:
      - {date: <Egg 1>, laid: <Eggs 1>}
      - {date: <Hatched 1>, hatched: <Chicks 1>}
      - {date: <Egg 2>, laid: <Eggs 2>}
  `;
  const row = (hatched: string) =>
    `Pair,Egg 1,Eggs 1,Hatched 1,Chicks 1,Egg 2,Eggs 2\nSF-1,2026-03-01,4,${hatched},3,2026-05-01,4\n`;

  test('two clutches in one row', () => {
    expect(problems(row('2026-03-17'), twice)).toEqual([
      'old.csv row 2: `laid` on 2026-05-01 comes after `hatched` on 2026-03-17, but a row is one clutch',
    ]);
  });

  test('unless the mapping numbers them', () => {
    const numbered = twice.replace('laid: <Eggs 2>', 'clutch: 2, laid: <Eggs 2>');
    expect(logs(row('2026-03-17'), numbered)['SF-1']?.at(-1)).toBe('{date: 2026-05-01, clutch: 2, laid: 4}');
  });

  test('young that hatched before the eggs were laid', () => {
    expect(problems(row('2026-02-17'), twice)[0]).toContain('`laid` on 2026-03-01 comes after `hatched`');
  });

  test('one pair whose name is written in two ways', () => {
    const mapping = 'rows: clutches\npair: <Pair>\nspecies: star finch\nlog:\n  - {date: <Egg>, laid: 1}\n';
    expect(problems('Pair,Egg\nLW-1,2026-03-01\nlw -1,2026-05-01\n', mapping)).toEqual([
      'old.csv row 3: `lw -1` and `LW-1` differ only in capitals or blanks',
    ]);
  });

  test('a ring of which a spreadsheet made a number', () => {
    const mapping =
      'rows: clutches\npair: <Pair>\nspecies: star finch\nlog:\n  - {date: <Day>, hatched: 1, ringed: {c1: <Ring>}}\n';
    expect(problems('Pair,Day,Ring\nLW-1,2026-03-01,2.40E+05\n', mapping)).toEqual([
      'old.csv row 2 Ring: `2.40E+05` is how spreadsheets shorten a long number; its figures are lost',
    ]);
  });

  test('a count with words behind it, named by its column', () => {
    const mapping =
      'rows: clutches\npair: <Pair>\nspecies: star finch\nlog:\n  - {date: <Day>, laid: <Eggs>}\n';
    expect(problems('Pair,Day,Eggs\nLW-1,2026-03-01,4 eggs\n', mapping)).toEqual([
      'old.csv row 2 Eggs: LW-1: `4 eggs` is not an egg',
    ]);
  });
});
