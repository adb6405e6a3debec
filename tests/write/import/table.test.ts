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

test('the separator that is asked for goes before the likely one', () => {
  expect(readTable('t.csv', 'a;b,c\n1;2,3\n', 'semicolon').table.headings).toEqual(['a', 'b,c']);
});
