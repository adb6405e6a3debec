import type { FindingCode } from './codes.ts';
import { naturally } from './naturally.ts';

/** A stretch of one line in a file of the room: 1-based line and column, counted in code points. */
export interface Place {
  /** Relative to the room, with `/`. */
  file: string;
  line: number;
  column: number;
  /** Code points under the marker; at least 1. */
  length: number;
}

/** Told by its shape, as a key does not tell it: `at` also says whom a bird chases. */
export function isPlace(value: unknown): value is Place {
  return typeof value === 'object' && value !== null && 'file' in value && 'line' in value;
}

/** What a value says, as text, wherever it stands: of two that say the same it is the same. */
export function withoutPlaces(value: unknown): string {
  return JSON.stringify(value, (_name, inner) => (isPlace(inner) ? undefined : inner));
}

/** The words that a finding's sentence needs, by name. */
export type FindingArgs = Record<string, string | number>;

/** `error`: something cannot be read or cannot be true. `hint`: it reads, but may not say what was meant. */
export type Level = 'error' | 'hint';

/**
 * Something the keeper should know about what a file says. Data only: `codes.ts` has the sentences, the report
 * lays them out.
 */
export interface Finding {
  code: FindingCode;
  at: Place;
  args: FindingArgs;
}

/** Order of findings: by file, line and column. */
export function byPlace({ at: a }: Finding, { at: b }: Finding): number {
  return naturally(a.file, b.file) || a.line - b.line || a.column - b.column;
}
