import { expect, it } from 'vitest';
import { jsonText } from '../../../src/report/json/text.ts';
import { jsonParts, ndjsonParts } from '../../../src/report/tables/json.ts';
import type { Table } from '../../../src/report/tables/table.ts';

const tableJson = (one: Table) => [...jsonParts(one)].join('');
const ndjsonText = (one: Table) => [...ndjsonParts(one)].join('');

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

it('a long table is written a part at a time, and no part shows where it was begun', () => {
  for (const length of [0, 1, 1000, 2001]) {
    const rows = Array.from({ length }, (_, index) => ({ id: `"rows": [${index}`, F: null }));
    const long = { ...table, rows };
    expect([...jsonParts(long)].length).toBeGreaterThanOrEqual(length / 1000);
    expect(tableJson(long)).toBe(jsonText({ nestlog: 1, table: 'birds', rows }));
  }
});

it('by the line there is one object a row, and it says the same', () => {
  const lines = ndjsonText(table).trimEnd().split('\n');
  expect(lines.map((line) => JSON.parse(line))).toEqual(table.rows);
  expect(ndjsonText({ ...table, rows: [] })).toBe('');
});

it('neither holds what a terminal obeys', () => {
  expect(tableJson(table) + ndjsonText(table)).not.toContain('\u001b');
});
