import { csvParts } from './csv.ts';
import { ndjsonParts, tableJsonParts } from './json.ts';
import type { Table } from './table.ts';

/** The forms in which a table can be had, a part of its text at a time. */
export const formats = {
  csv: csvParts,
  json: tableJsonParts,
  ndjson: ndjsonParts,
} satisfies Record<string, (table: Table) => Iterable<string>>;

export type Format = keyof typeof formats;
