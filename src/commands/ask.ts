import { createInterface } from 'node:readline/promises';

/** Asks one question of whoever sits at the terminal; null where nothing was answered. */
export type Ask = (question: string) => Promise<string | null>;

/** Both ends of a conversation. */
export interface Terminal {
  input: NodeJS.ReadableStream;
  output: NodeJS.WritableStream;
}

/** The terminal, if both ends are one: a script must never wait for an answer that nobody gives. */
export function terminal(): Terminal | null {
  const { stdin, stdout } = process;
  return stdin.isTTY === true && stdout.isTTY === true ? { input: stdin, output: stdout } : null;
}

/** A conversation, closed when the work is done. Without a terminal nothing is asked: every answer is null. */
export async function withAsking<T>(ends: Terminal | null, work: (ask: Ask) => Promise<T>): Promise<T> {
  if (ends === null) return work(async () => null);
  const lines = createInterface({ ...ends, terminal: false });
  const answers = lines[Symbol.asyncIterator]();
  try {
    return await work(async (question) => {
      ends.output.write(`${question} `);
      // The end of the input is no answer.
      const { value } = await answers.next();
      return (value ?? '').trim() || null;
    });
  } finally {
    lines.close();
  }
}
