import { describe, expect, test } from 'vitest';
import { guessMapping } from '../../../src/write/import/guess.ts';
import { readTable } from '../../../src/write/import/table.ts';
import { logs, plan, problems } from './importing.ts';

const guess = (csv: string) => guessMapping(readTable('old.csv', csv).table);

const clutches = `Pair,Species,Cock,Laid,Eggs,Sitting,Hatched on,Chicks,Fledged,Remarks,Moon
LW-1,lavender waxbill,LW-19-04,04/03/2024,4,07/03/2024,19/03/2024,3,3,one clear,full
LW-2,lavender waxbill,NA,05/03/2024,5,,,,,,new
`;

describe('one row a clutch', () => {
  test('every column with a meaning is used, the others are named', () => {
    expect(
      guess(clutches),
    ).toBe(`# How old.csv becomes journals. A guess from its headings: read it line by line.
# <Heading> stands for the cell of a row; \`<Hatched> + 18\` for a date counted from another, which the entry will say.
rows: clutches
dates: day-first   # row 2, Hatched on: 19/03/2024 can be nothing else
nothing: ["NA"]
pair: <Pair>
species: <Species>
cock: <Cock>
log:
  - {date: <Laid>, laid: <Eggs>, note: "<Remarks>"}
  - {date: <Sitting>, sitting}
  - {date: <Hatched on>, hatched: <Chicks>}
  # No date for it in the table. Is this about right? Then take the # away:
  # - {date: <Hatched on> + 20, fledged: <Fledged>}
# Not used: Moon
`);
  });

  test('the guess is a mapping that imports the table', () => {
    expect(logs(clutches, guess(clutches))['LW-1']).toEqual([
      '{date: 2024-03-04, clutch: 1, laid: 4, note: "one clear"}',
      '{date: 2024-03-07, clutch: 1, sitting}',
      '{date: 2024-03-19, clutch: 1, hatched: 3}',
    ]);
  });

  test('a line with its # taken away is one more entry', () => {
    const opened = guess(clutches).replace('  # - {', '  - {');
    expect(logs(clutches, opened)['LW-1']?.at(-1)).toBe(
      '{date: 2024-04-08, clutch: 1, fledged: 3, note: "date assumed: Hatched on + 20 d"}',
    );
  });
});

describe('one row an event', () => {
  const events = `Date,Pair,What,Number,Notes
2024-03-04,LW-1,egg,1,
2024-03-05,LW-1,egg,2,
2024-03-07,LW-1,sitting,,all night
2024-03-08,LW-1,moon,,
`;

  test('every word is an entry or a question', () => {
    expect(guess(events)).toContain(`rows: events
pair: <Pair>
# species: of which species are they? species: lavender waxbill
log:
  - {when: {What: egg}, date: <Date>, laid: <Number>, note: "<Notes>"}
  - {when: {What: sitting}, date: <Date>, sitting, note: "<Notes>"}
  # Which observation is it?
  # - {when: {What: moon}, date: <Date>, checked, note: "<Notes>"}
`);
  });

  test('what it does not know stops the import at its row', () => {
    expect(problems(events, guess(events))).toEqual([
      'old.csv row 5 What: the mapping does not say what `moon` means',
    ]);
  });
});

describe('what the table does not tell is asked, and nothing is imported before it is answered', () => {
  test('the order of dates', () => {
    const csv = 'Pair,Laid,Eggs\nA-1,04/03/2024,4\n';
    expect(guess(csv)).toContain(
      '# dates: day-first or month-first? `04/03/2024` may be 2024-03-04 or 2024-04-03',
    );
    expect(problems(csv, guess(csv))).toHaveLength(1);
    expect(logs(csv, `dates: month-first\n${guess(csv)}`)['A-1']).toEqual([
      '{date: 2024-04-03, clutch: 1, laid: 4}',
    ]);
  });

  test('spreadsheets’ numbers of days', () => {
    const csv = 'Pair,Laid,Eggs\nA-1,45355,4\n';
    expect(guess(csv)).toContain(
      "# excel-dates: 1900 or 1904? Laid has a spreadsheet's number of a day, 45355",
    );
    expect(problems(csv, guess(csv))).toHaveLength(1);
    expect(plan(csv, `excel-dates: 1900\n${guess(csv)}`).problems).toEqual([]);
  });

  test('the pair', () => {
    const csv = 'Laid,Eggs\n2024-03-04,4\n';
    expect(problems(csv, guess(csv))).toEqual(['map.yaml: `pair:` is missing']);
  });
});

test('headings that YAML would take apart are quoted', () => {
  const csv = 'Pair,"Eggs, laid",Laid: on\nA-1,4,2024-03-04\n';
  expect(guess(csv)).toContain('  - {date: "<Laid: on>", laid: "<Eggs, laid>"}');
  expect(logs(csv, guess(csv))['A-1']).toEqual(['{date: 2024-03-04, clutch: 1, laid: 4}']);
});
