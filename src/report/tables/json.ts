import { jsonText } from '../json/text.ts';
import type { Table } from './table.ts';

/** A whole table as one JSON object; its rows have every column, null where it is unknown. */
export function tableJson({ name, rows }: Table): string {
  return jsonText({ nestlog: 1, table: name, rows });
}

/** One JSON object a line and row. A line break inside a value is written `\n`, so that blanks at breaks are layout. */
export function ndjsonText({ rows }: Table): string {
  return rows.map((row) => `${jsonText(row).replaceAll(/\n */g, '')}\n`).join('');
}
