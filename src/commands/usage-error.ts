/** The command was called wrongly: its message is the whole answer on stderr, and the exit code is 2. */
export class UsageError extends Error {
  override name = 'UsageError';
}
