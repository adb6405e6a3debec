import { type Day, formatDay } from '../../days.ts';
import type { Cell, Table } from './table.ts';

/** One column of a table: its name for programs, what it holds, and what stands in it. */
export interface Column<T> {
  name: string;
  /** What it holds, for the manual. */
  doc: string;
  value: (one: T) => Cell;
}

/** A table of these columns; each row has all of them. */
export function tableOf<T>(name: string, columns: readonly Column<T>[], rows: readonly T[]): Table {
  return {
    name,
    columns: columns.map((column) => column.name),
    rows: rows.map((one) => Object.fromEntries(columns.map((column) => [column.name, column.value(one)]))),
  };
}

export function dayCell(day: Day | null | undefined): string | null {
  return day === null || day === undefined ? null : formatDay(day);
}
