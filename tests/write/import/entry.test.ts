import { describe, expect, test } from 'vitest';
import { logs, problems } from './importing.ts';

const mapping = (entry: string) => `
  rows: events
  pair: <pair>
  log:
    - ${entry}
`;

/** The one line that a row becomes. */
const line = (headings: string, row: string, entry: string) =>
  logs(`pair,${headings}\nA-1,${row}\n`, mapping(`{date: <date>, ${entry}}`))['A-1'];

describe('an entry', () => {
  test('keeps what the mapping says of every row', () => {
    expect(line('date', '2024-03-04', 'laid: 1, site: box')).toEqual([
      '{date: 2024-03-04, site: box, laid: 1}',
    ]);
  });

  test('fills lists and maps, keys as well, and leaves out what is empty', () => {
    expect(
      line('date,a,b,grams', '2024-03-04,e1,,1.2', 'laid: 2, weighed: {<a>: <grams>, <b>: <grams>}'),
    ).toEqual(['{date: 2024-03-04, laid: 2, weighed: {e1: 1.2}}']);
    expect(line('date,a,b', '2024-03-04,egg food,', 'food: [<a>, <b>]')).toEqual([
      '{date: 2024-03-04, food: [egg food]}',
    ]);
  });

  test('takes the whole number of which a spreadsheet made a fraction, and no other', () => {
    for (const cell of ['4.0', '"4,0"', '4.00'])
      expect(line('date,eggs', `2024-03-04,${cell}`, 'laid: <eggs>')).toEqual([
        '{date: 2024-03-04, laid: 4}',
      ]);
    expect(line('date,a', '2024-03-04,0.0', 'laid: <a>, parted')).toEqual(['{date: 2024-03-04, parted}']);
    expect(line('date,g', '2024-03-04,8.5', 'laid: 1, weighed: {e1: <g>}')).toEqual([
      '{date: 2024-03-04, laid: 1, weighed: {e1: 8.5}}',
    ]);
    for (const cell of ['4.5', '4.000', 'ca. 4'])
      expect(
        problems(`pair,date,eggs\nA-1,2024-03-04,${cell}\n`, mapping('{date: <date>, laid: <eggs>}')),
      ).not.toEqual([]);
  });

  test('keeps the time of a date that has one', () => {
    expect(line('date', '2024-03-04 07:30', 'laid: 1')).toEqual(['{date: 2024-03-04, time: 07:30, laid: 1}']);
  });

  test('takes the first date that there is, and says which was counted', () => {
    const entry = '{date: <hatched> or <sitting> + 13, hatched: <n>, note: <note>}';
    const rows = 'pair,hatched,sitting,n,note\nA-1,2024-03-20,2024-03-07,2,\nA-2,,2024-03-07,2,noisy\n';
    expect(logs(rows, mapping(entry))).toEqual({
      'A-1': ['{date: 2024-03-20, hatched: 2}'],
      'A-2': ['{date: 2024-03-20, hatched: 2, note: "noisy; date assumed: sitting + 13 d"}'],
    });
  });

  test('a look that is counted says so', () => {
    expect(line('date', '2024-03-20', 'after: <date> - 1, hatched: 2')).toEqual([
      '{date: 2024-03-20, after: 2024-03-19, hatched: 2, note: "last look assumed: date − 1 d"}',
    ]);
  });

  test('days to add must be a number', () => {
    const rows = 'pair,date,days\nA-1,2024-03-20,few\n';
    expect(problems(rows, mapping('{date: <date> + <days>, hatched: 2}'))).toEqual([
      'old.csv row 2 date: `few` is no number of days (<date> + <days>)',
    ]);
  });

  test('a count that is none is named by its column', () => {
    const rows = 'pair,date,eggs,chicks\nA-1,2024-03-20,five,3\n';
    expect(problems(rows, mapping('{date: <date>, lost: <eggs> - <chicks>}'))).toContain(
      'old.csv row 2 eggs: `five` is no number',
    );
  });
});
