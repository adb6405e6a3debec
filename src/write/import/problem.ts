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
    this.#found.push({ file: this.#file, row: this.#row, line: null, column, text, hint });
  }
}
