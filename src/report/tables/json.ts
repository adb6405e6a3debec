import { jsonText } from '../json/text.ts';
import { rowsInTurn, type Table } from './table.ts';

/** A whole table as one JSON object; its rows have every column, null where it is unknown. */
export function* jsonParts({ name, rows }: Table): Generator<string> {
  yield jsonText({ nestlog: 1, table: name, rows: [...rows] });
}

/** One JSON object a line and row. A line break inside a value is written `\n`, so that blanks at breaks are layout. */
export function* ndjsonParts(table: Table): Generator<string> {
  for (const rows of rowsInTurn(table)) {
    yield rows.map((row) => `${jsonText(row).replaceAll(/\n */g, '')}\n`).join('');
  }
}
