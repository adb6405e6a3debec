import { expect, it } from 'vitest';
import { ndjsonParts, tableJsonParts } from '../../../src/report/tables/json.ts';
import type { Table } from '../../../src/report/tables/table.ts';
import { whole } from '../../whole.ts';

const tableJson = (one: Table) => whole(tableJsonParts(one));
const ndjsonText = (one: Table) => whole(ndjsonParts(one));

const table = {
  name: 'birds',
  columns: ['id', 'F'],
  rows: [
    { id: 'a\n   b "c"', F: 0.1 },
    { id: '\u001b[2J', F: null },
  ],
};

it('a table is one object with its rows', () => {
  expect(JSON.parse(tableJson(table))).toEqual({ nestlog: 1, table: 'birds', rows: table.rows });
});

it('by the line there is one object a row, and it says the same', () => {
  const lines = ndjsonText(table).trimEnd().split('\n');
  expect(lines.map((line) => JSON.parse(line))).toEqual(table.rows);
  expect(ndjsonText({ ...table, rows: [] })).toBe('');
});

it('neither holds what a terminal obeys', () => {
  expect(tableJson(table) + ndjsonText(table)).not.toContain('\u001b');
});
