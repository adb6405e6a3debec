import { understandAll } from '../../../src/commands/room.ts';
import type { SourceFile } from '../../../src/journal/record.ts';
import { type ImportPlan, planImport } from '../../../src/write/import/plan.ts';
import { day, dedent } from '../../rooms.ts';

interface Given {
  existing?: Record<string, string>;
  into?: string;
  today?: string;
}

/** Plans the import of a table that stands in a test as text: rows are lines. */
export function plan(
  table: string,
  mapping: string,
  { existing = {}, into = '', today }: Given = {},
): ImportPlan {
  const files: SourceFile[] = Object.entries(existing).map(([path, text]) => ({ path, text: dedent(text) }));
  const on = day(today ?? '2026-06-01');
  const csv = { name: 'old.csv', text: dedent(table) };
  return planImport(
    csv,
    { name: 'map.yaml', text: dedent(mapping) },
    { existing: files, into, clock: { day: on, today: on }, understand: understandAll },
  );
}

/** The problems of an import, a line each: where, what. */
export function problems(table: string, mapping: string, given: Given = {}): string[] {
  return plan(table, mapping, given).problems.map(
    ({ file, row, line, column, text }) =>
      `${file}${row === null ? '' : ` row ${row}`}${line === null ? '' : ` line ${line}`}${column === null ? '' : ` ${column}`}: ${text}`,
  );
}

/** The log lines that an import would write, by pair. */
export function logs(table: string, mapping: string, given: Given = {}): Record<string, string[]> {
  const { problems: found, journals } = plan(table, mapping, given);
  if (found.length > 0) throw new Error(found.map(({ row, text }) => `row ${row}: ${text}`).join('\n'));
  return Object.fromEntries(
    journals.map(({ pair, text }) => [
      pair,
      text.split('\n').flatMap((line) => (line.startsWith('  - ') ? [line.slice(4)] : [])),
    ]),
  );
}
