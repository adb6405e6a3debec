import { codeOf, meaningOf } from '../journal/system-error.ts';

/** Why a file could not be read or written, in words that say what to look at. */
export function reasonOf(error: unknown): string {
  return meaningOf(codeOf(error)) ?? (error instanceof Error ? error.message : String(error));
}
