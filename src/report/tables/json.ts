import { jsonText } from '../json/text.ts';
import { rowsInTurn, type Table } from './table.ts';

/** What stands around the rows of an object that holds nothing behind them. */
const [OPEN, CLOSE] = ['"rows": [', '\n  ]\n}\n'];

/** A whole table as one JSON object, some rows at a time; they have every column, null where it is unknown. */
export function* jsonParts(table: Table): Generator<string> {
  const about = { nestlog: 1, table: table.name };
  let isBegun = false;
  for (const rows of rowsInTurn(table)) {
    const part = jsonText({ ...about, rows }).slice(0, -CLOSE.length);
    yield isBegun ? `,${part.slice(part.indexOf(OPEN) + OPEN.length)}` : part;
    isBegun = true;
  }
  yield isBegun ? CLOSE : jsonText({ ...about, rows: [] });
}

/** One JSON object a line and row. A line break inside a value is written `\n`, so that blanks at breaks are layout. */
export function* ndjsonParts(table: Table): Generator<string> {
  for (const rows of rowsInTurn(table)) {
    yield rows.map((row) => `${jsonText(row).replaceAll(/\n */g, '')}\n`).join('');
  }
}
