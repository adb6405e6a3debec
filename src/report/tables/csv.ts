import { stringify } from 'csv-stringify/sync';
import { inTurn } from '../../grouped.ts';
import { marked } from '../../journal/text/formula.ts';
import type { Row, Table } from './table.ts';

/**
 * Comma-separated values as RFC 4180 has them: a head, CR LF, quotes where they are needed. Nothing is unknown. Text that
 * a spreadsheet would take for a formula has an apostrophe before it; numbers stay as they are.
 */
export function* csvParts(table: Table): Generator<string> {
  yield text(table, [], true);
  for (const rows of inTurn(table.rows)) yield text(table, rows, false);
}

function text({ columns }: Table, rows: Row[], header: boolean): string {
  return stringify(rows, {
    header,
    columns: [...columns],
    record_delimiter: 'windows',
    // By itself it quotes a whole CR LF only, not one of the two.
    quoted_match: /[\r\n]/,
    cast: { string: (cell, { header: inHead }) => (inHead ? cell : marked(cell)) },
  });
}
