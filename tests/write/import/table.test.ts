import { expect, test } from 'vitest';
import { readTable } from '../../../src/write/import/table.ts';

// The rules of CSV themselves are in tests/published/csv-rfc4180.test.ts.

test('cells lose the blanks around them', () => {
  expect(readTable('t.csv', ' a , b\n 1 ,x y \n').table).toEqual({
    file: 't.csv',
    headings: ['a', 'b'],
    rows: [{ number: 2, cells: ['1', 'x y'] }],
  });
});

test('the apostrophe that keeps a spreadsheet from running a text is none of the text', () => {
  const { table } = readTable('t.csv', "note,n\n'=2+2,-5\n''=2,'tis\n");
  expect(table.rows.map(({ cells }) => cells)).toEqual([
    ['=2+2', '-5'],
    ["'=2", "'tis"],
  ]);
});

test('bars may part the cells', () => {
  const { table } = readTable('t.csv', 'pair|first egg\nLW-1|2024-05-01\n');
  expect(table.headings).toEqual(['pair', 'first egg']);
  expect(table.rows[0]?.cells).toEqual(['LW-1', '2024-05-01']);
});

test('the separator that is asked for goes before the likely one', () => {
  expect(readTable('t.csv', 'a;b,c\n1;2,3\n', 'semicolon').table.headings).toEqual(['a', 'b,c']);
});

const headings = (text: string) => readTable('t.csv', text).table.headings;

test('a line that tells the separator, and empty rows above the headings, are passed over', () => {
  expect(headings('sep=;\na;b,c\n1;2\n')).toEqual(['a', 'b,c']);
  expect(headings('\n,,\na,b\n1,2\n')).toEqual(['a', 'b']);
  expect(readTable('t.csv', 'sep=;\n;\na;b\n1;2\n').table.rows).toEqual([{ number: 4, cells: ['1', '2'] }]);
});

test('a title or merged cells above the table are one problem, not one for every row', () => {
  for (const above of ['My birds 2026', 'My birds 2026;;', 'Pair;;']) {
    const { problems, headless } = readTable('t.csv', `${above}\na;b;c\n1;2;3\n4;5;6\n`);
    expect(headless).toBe(true);
    expect(problems.map(({ row, text }) => [row, text])).toEqual([
      [1, '1 heading, but the next row has 3 cells: is this a title above the table?'],
    ]);
  }
});
