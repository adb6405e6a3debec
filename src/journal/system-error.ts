/** The operating system's code of an error, such as `ENOSPC`; empty where it has none. */
export function codeOf(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : '';
}
