import { answerFile } from '../commands/kept-answer.ts';
import { type Day, dayOf } from '../days.ts';

/** The day on the keeper's wall, by the clock and the time zone of this machine. */
export function today(): Day {
  const now = new Date();
  return dayOf(now.getFullYear(), now.getMonth() + 1, now.getDate());
}

/** Where the answer to these words, called here, is kept between runs; undefined where nothing can be kept. */
export function answerPlace(words: string[]): string | undefined {
  const { isTTY, columns } = process.stdout;
  const terminal = { isTerminal: isTTY === true, columns };
  return answerFile({ words, here: process.cwd(), environment: process.env, ...terminal });
}
