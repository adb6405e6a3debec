import { expect, it } from 'vitest';
import { csvParts } from '../../../src/report/tables/csv.ts';
import type { Table } from '../../../src/report/tables/table.ts';

const csvText = (table: Table) => [...csvParts(table)].join('');

it('is as RFC 4180 has it: a head, CR LF, quotes where they are needed, nothing for the unknown', () => {
  const table = {
    name: 'birds',
    columns: ['id', 'note', 'F'],
    rows: [
      { id: 'LW-1', note: 'said "sat well", left', F: 0.125 },
      { id: '014', note: null, F: 0 },
      { id: 'two\nlines', note: 'Röt', F: null },
    ],
  };
  expect(csvText(table)).toBe(
    'id,note,F\r\nLW-1,"said ""sat well"", left",0.125\r\n014,,0\r\n"two\nlines",Röt,\r\n',
  );
});

it('leaves no text that a spreadsheet would run, and every number as it is', () => {
  const rows = [
    { note: '=HYPERLINK("file:///x","look")', n: -0.5 },
    { note: '-5 °C at night\r\nthen frost', n: -7 },
    { note: "'=1", n: null },
  ];
  expect(csvText({ name: 'events', columns: ['note', 'n'], rows })).toBe(
    `note,n\r\n"'=HYPERLINK(""file:///x"",""look"")",-0.5\r\n"'-5 °C at night\r\nthen frost",-7\r\n''=1,\r\n`,
  );
});

it('of an empty table is its head', () => {
  expect(csvText({ name: 'birds', columns: ['id', 'ring'], rows: [] })).toBe('id,ring\r\n');
});

it('of very many rows is the same text, a part at a time', () => {
  const rows = Array.from({ length: 2500 }, (_, n) => ({ n }));
  const parts = [...csvParts({ name: 'numbers', columns: ['n'], rows })];
  expect(parts.length).toBeGreaterThan(2);
  expect(parts.join('')).toBe(`n\r\n${rows.map(({ n }) => `${n}\r\n`).join('')}`);
});
