import { csvText } from './csv.ts';
import { ndjsonText, tableJson } from './json.ts';
import type { Table } from './table.ts';

/** The forms in which a table can be had. */
export const formats = {
  csv: csvText,
  json: tableJson,
  ndjson: ndjsonText,
} satisfies Record<string, (table: Table) => string>;

export type Format = keyof typeof formats;
