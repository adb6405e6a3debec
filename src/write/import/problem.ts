/** Why an import cannot be done yet: where it stands, and what would help. */
export interface ImportProblem {
  file: string;
  /** Row of the table as a spreadsheet numbers it: the headings are row 1. */
  row: number | null;
  /** Line of the mapping. */
  line: number | null;
  /** The table's column, by its heading. */
  column: string | null;
  text: string;
  hint: string | null;
}

/** A problem of a file, at the row, line or column that is known of it. */
export function problemIn(
  file: string,
  at: Partial<Pick<ImportProblem, 'row' | 'line' | 'column'>>,
  text: string,
  hint: string | null = null,
): ImportProblem {
  return { file, row: null, line: null, column: null, ...at, text, hint };
}

/** Where the problems of one row of the table are collected. */
export class RowProblems {
  readonly #file: string;
  readonly #row: number;
  readonly #found: ImportProblem[];

  constructor(file: string, row: number, found: ImportProblem[]) {
    this.#file = file;
    this.#row = row;
    this.#found = found;
  }

  add(column: string | null, text: string, hint: string | null = null): void {
    this.#found.push(problemIn(this.#file, { row: this.#row, column }, text, hint));
  }
}
