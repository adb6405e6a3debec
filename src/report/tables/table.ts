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

/** As many rows as are made and written at a time: a lifetime's eggs need not stand in memory as text. */
const AT_A_TIME = 1000;

/** The rows, some at a time; of a table without rows nothing. */
export function* rowsInTurn({ rows }: Table): Generator<Row[]> {
  let part: Row[] = [];
  for (const row of rows) {
    part.push(row);
    if (part.length < AT_A_TIME) continue;
    yield part;
    part = [];
  }
  if (part.length > 0) yield part;
}
