import type { ImportOutcome } from '../import.ts';
import { jsonText } from './text.ts';

/** What an import did, or would do, for programs. */
export function importJson(outcome: ImportOutcome): string {
  const { table, rows, skipped, journals, dates, unread, zeros, hints, problems, written } = outcome;
  return jsonText({
    nestlog: 1,
    table,
    written,
    rows,
    skipped,
    dates: { order: dates.order, because: dates.because },
    unread,
    zeros: Object.fromEntries(zeros),
    journals: journals.map(({ pair, path, entries, assumed }) => ({ pair, path, entries, assumed })),
    hints: hints.map(({ row, text, times }) => ({ row, text, times })),
    problems: problems.map(({ file, row, line, column, text, hint }) => ({
      file,
      row,
      line,
      column,
      text,
      hint,
    })),
  });
}
