import { inTurn } from '../../grouped.ts';
import { jsonParts, jsonText } from '../json/text.ts';
import type { Table } from './table.ts';

/** A whole table as one JSON object; its rows have every column, null where it is unknown. */
export function tableJsonParts({ name, rows }: Table): Iterable<string> {
  return jsonParts({ nestlog: 1, table: name, rows: [] }, 'rows', rows);
}

/** One JSON object a line and row. A line break inside a value is written `\n`, so that blanks at breaks are layout. */
export function* ndjsonParts(table: Table): Generator<string> {
  for (const rows of inTurn(table.rows)) {
    yield rows.map((row) => `${jsonText(row).replaceAll(/\n */g, '')}\n`).join('');
  }
}
