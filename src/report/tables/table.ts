/** What a cell of a table holds; null is unknown. */
export type Cell = string | number | null;

/** Rows for other programs: plain values, the same columns in each, whatever they are then written as. */
export interface Table {
  name: string;
  columns: readonly string[];
  rows: readonly Readonly<Record<string, Cell>>[];
}
