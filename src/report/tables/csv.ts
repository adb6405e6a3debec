import { stringify } from 'csv-stringify/sync';
import { marked } from '../../journal/text/formula.ts';
import type { Table } from './table.ts';

/**
 * Comma-separated values as RFC 4180 has them: a head, CR LF, quotes where they are needed. Nothing is unknown. Text that
 * a spreadsheet would take for a formula has an apostrophe before it; numbers stay as they are.
 */
export function csvText({ columns, rows }: Table): string {
  return stringify([...rows], {
    header: true,
    columns: [...columns],
    record_delimiter: 'windows',
    // By itself it quotes a whole CR LF only, not one of the two.
    quoted_match: /[\r\n]/,
    cast: { string: (text, { header }) => (header ? text : marked(text)) },
  });
}
