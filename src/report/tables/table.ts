/** What a cell of a table holds; null is unknown. */
export type Cell = string | number | null;

/** One row: a cell for each column. */
export type Row = Readonly<Record<string, Cell>>;

/** Rows that can be walked through as often as wanted. They need not all be there at once. */
export interface Rows extends Iterable<Row> {
  /** Where rows are made at each walk, known without another one once they were walked through. */
  readonly length: number;
}

/** Rows for other programs: plain values, the same columns in each, whatever they are then written as. */
export interface Table {
  name: string;
  columns: readonly string[];
  rows: Rows;
}
