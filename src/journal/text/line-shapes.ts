// What a line of YAML begins with, by which what is read and what is written agree. Each is tried at the start of a line,
// whose end may still be there.

export const DOCUMENT_MARK = /^(?:---|\.\.\.)(?=[ \t\r\n]|$)/;

/** What git leaves where two people changed one line. */
export const CONFLICT_MARK = /^(?:<{7}|\|{7}|={7}|>{7})(?=[ \r\n]|$)/;

/** No journal has a line of more signs; garbage does, and would keep the parser busy. */
export const LONGEST_LINE = 100_000;

/** An item of a list. */
export const DASH = /^[ \t]*-(?=[ \t\r\n]|$)/;

/** A key of words, in quotes or not; the second group is the key. */
export const KEY = /^[ \t]*(["']?)(\w+(?:[ -]+\w+)*)\1[ \t]*:(?=[ \t\r\n]|$)/;
