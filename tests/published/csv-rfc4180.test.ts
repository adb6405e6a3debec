/**
 * RFC 4180, "Common Format and MIME Type for Comma-Separated Values (CSV) Files" (2005), section 2, rule by rule, and
 * where spreadsheets are known to leave it (common practice): a byte order mark, semicolons or tabs for commas.
 */
import { stringify } from 'csv-stringify/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readTable } from '../../src/write/import/table.ts';

function rows(text: string): string[][] {
  const { table, problems } = readTable('t.csv', text);
  expect(problems).toEqual([]);
  return [table.headings, ...table.rows.map(({ cells }) => cells)];
}

const problems = (text: string) =>
  readTable('t.csv', text).problems.map(({ row, text: said }) => `row ${row}: ${said}`);

describe('RFC 4180', () => {
  it('1: each record is a line of its own, ended by CRLF', () => {
    expect(rows('a,b\r\naaa,bbb\r\nzzz,yyy\r\n')).toEqual([
      ['a', 'b'],
      ['aaa', 'bbb'],
      ['zzz', 'yyy'],
    ]);
  });

  it('2: the last record may lack its line end', () => {
    expect(rows('a,b\r\naaa,bbb')).toEqual([
      ['a', 'b'],
      ['aaa', 'bbb'],
    ]);
  });

  it('3: the first line holds the headings', () => {
    expect(readTable('t.csv', 'pair,laid\r\nLW-1,2\r\n').table.headings).toEqual(['pair', 'laid']);
  });

  it('4: every line has the same number of fields', () => {
    expect(problems('a,b,c\r\n1,2,3\r\n1,2\r\n1,2,3,4\r\n')).toEqual([
      'row 3: 2 cells, but there are 3 headings',
      'row 4: 4 cells, but there are 3 headings',
    ]);
  });

  it('5: fields may be in quotes or not; a quote inside of a bare field is none of it', () => {
    expect(rows('a,b\r\n"aaa",bbb\r\n')[1]).toEqual(['aaa', 'bbb']);
    expect(problems('a,b\r\nfine,too\r\n5" pot,bbb\r\n')).toEqual([
      'row 3: a quote stands inside of a cell that has none around it',
    ]);
  });

  it('6: line breaks, quotes and commas may stand inside of quotes', () => {
    expect(rows('a,b\r\n"b\r\nbb","c,c"\r\n"x\ny",z\r\n')).toEqual([
      ['a', 'b'],
      ['b\r\nbb', 'c,c'],
      ['x\ny', 'z'],
    ]);
  });

  it('7: a quote inside of quotes is doubled', () => {
    expect(rows('a,b\r\n"b""bb",c\r\n')[1]).toEqual(['b"bb', 'c']);
    expect(problems('a,b\r\n"b"bb",c\r\n')).toEqual(['row 2: text follows where a quote has closed']);
  });

  it('a quote that is never closed is named by its row', () => {
    expect(problems('a,b\r\n1,2\r\n"1,2\r\n3,4\r\n')).toEqual(['row 3: a quote is opened and never closed']);
  });
});

describe('spreadsheets', () => {
  it('put a byte order mark before the first heading', () => {
    expect(rows('\ufeffa,b\n1,2\n')[0]).toEqual(['a', 'b']);
  });

  it.each([';', '\t'])('put %j for the comma in some countries', (mark) => {
    expect(rows(`a${mark}"b, or c"\n1,5${mark}2\n`)).toEqual([
      ['a', 'b, or c'],
      ['1,5', '2'],
    ]);
  });

  it('number rows with the empty ones among them, and one with line breaks once', () => {
    const { table } = readTable('t.csv', 'a,b\n\n"x\ny",1\n,\nlast,2\n');
    expect(table.rows.map(({ number }) => number)).toEqual([3, 5]);
  });

  it('save empty columns behind the last heading', () => {
    expect(rows('a,b,,\n1,2,,\n')).toEqual([
      ['a', 'b'],
      ['1', '2'],
    ]);
  });
});

it('a table of headings alone, or of nothing, is none', () => {
  expect(problems('a,b\r\n')).toEqual(['row null: no row below the headings']);
  expect(problems('')).toEqual(['row null: no row below the headings']);
});

it('a letter that is no UTF-8 is named by its row', () => {
  expect(problems('a,b\nfl\ufffdgge,2\n')).toEqual(['row 2: a letter that cannot be read']);
});

it('reads back what a writer of RFC 4180 wrote, whatever stands in the cells', () => {
  // U+FFFD stands for a byte that could not be read, and is refused as such.
  const cell = fc
    .string({ unit: 'grapheme', maxLength: 12 })
    .map((text) => `x${text.replace(/[\uFFFD\0]/g, '').trim()}x`);
  const table = fc.integer({ min: 1, max: 5 }).chain((width) => {
    const row = fc.array(cell, { minLength: width, maxLength: width });
    return fc.array(row, { minLength: 2, maxLength: 6 });
  });
  fc.assert(
    fc.property(table, (cells) => {
      const text = stringify(cells, { record_delimiter: 'windows', quoted: true });
      expect(readTable('t.csv', text, 'comma').table.rows.map((row) => row.cells)).toEqual(cells.slice(1));
    }),
  );
});
