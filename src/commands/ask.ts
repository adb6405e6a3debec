import { createInterface } from 'node:readline/promises';

/** Asks one question of whoever sits at the terminal; null where nothing was answered. */
export type Ask = (question: string) => Promise<string | null>;

/** Both ends must be a terminal: a script must never wait for an answer that nobody gives. */
export function isConversation(): boolean {
  return process.stdin.isTTY === true && process.stdout.isTTY === true;
}

/** A conversation with the terminal, closed when the work is done. Without one nothing is asked: every answer is null. */
export async function withAsking<T>(conversation: boolean, work: (ask: Ask) => Promise<T>): Promise<T> {
  if (!conversation) return work(async () => null);
  const terminal = createInterface({ input: process.stdin, output: process.stdout });
  const closed = new AbortController();
  terminal.once('close', () => closed.abort());
  try {
    return await work(async (question) => {
      try {
        return (await terminal.question(`${question} `, { signal: closed.signal })).trim() || null;
      } catch {
        // The end of the input is no answer.
        return null;
      }
    });
  } finally {
    terminal.close();
  }
}
