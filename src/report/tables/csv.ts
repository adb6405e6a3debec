import { stringify } from 'csv-stringify/sync';
import type { Table } from './table.ts';

/** Comma-separated values as RFC 4180 has them: a head, CR LF, quotes where they are needed. Nothing is unknown. */
export function csvText({ columns, rows }: Table): string {
  return stringify([...rows], {
    header: true,
    columns: [...columns],
    record_delimiter: 'windows',
    // By itself it quotes a whole CR LF only, not one of the two.
    quoted_match: /[\r\n]/,
  });
}
