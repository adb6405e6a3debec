import { type Day, formatDay } from '../../days.ts';
import type { Cell, Table } from './table.ts';

/** What a column holds, for readers and for programs. */
export interface Field {
  name: string;
  /** What it holds, for the manual and for a data package. */
  doc: string;
  /** Text where not said. Dates are ISO 8601, times `HH:MM`. */
  type?: 'integer' | 'number' | 'date' | 'time';
  /** All that can stand there, besides nothing. */
  oneOf?: readonly string[];
  /** There is always something. */
  required?: true;
}

/** One column of a table: what it is, and what stands in it. */
export interface Column<T> extends Field {
  value: (one: T) => Cell;
}

/** A table of these columns; each row has all of them, and is made when it is walked past. */
export function tableOf<T>(name: string, columns: readonly Column<T>[], ones: Iterable<T>): Table {
  const rowOf = (one: T) => Object.fromEntries(columns.map((column) => [column.name, column.value(one)]));
  let known: number | null = null;
  return {
    name,
    columns: columns.map((column) => column.name),
    rows: {
      get length() {
        known ??= Array.from(ones, () => null).length;
        return known;
      },
      *[Symbol.iterator]() {
        let walked = 0;
        for (const one of ones) {
          walked++;
          yield rowOf(one);
        }
        known = walked;
      },
    },
  };
}

export function dayCell(day: Day | null | undefined): string | null {
  return day === null || day === undefined ? null : formatDay(day);
}

export const YES_NO = ['yes', 'no'] as const;
