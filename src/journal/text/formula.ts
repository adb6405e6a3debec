/**
 * What spreadsheets take for a formula when they open a CSV: text that begins with `=`, `+`, `-` or `@`, or with a tab
 * or a line break, behind which they look on. (Common practice; the list is OWASP's, "CSV Injection".)
 */
const FORMULA = /^'*[=+\-@\t\r\n＝＋－＠]/;

/**
 * A text as it stands in a CSV cell: one that could be taken for a formula gets an apostrophe before it, and one that
 * already looks like that gets one more, so that {@link unmarked} gives every text back.
 */
export function marked(text: string): string {
  return FORMULA.test(text) ? `'${text}` : text;
}

/** The text of a CSV cell without the apostrophe that {@link marked} set. */
export function unmarked(cell: string): string {
  return cell.startsWith("'") && FORMULA.test(cell) ? cell.slice(1) : cell;
}
