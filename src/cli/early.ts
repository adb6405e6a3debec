import { keptAnswer } from '../commands/kept-answer.ts';
import { answerPlace, today } from './world.ts';

/**
 * Answers from what an earlier run kept, if nothing has changed since. A program of its own, as it needs a fiftieth of
 * the whole one.
 *
 * @returns whether there was such an answer; if not, nothing has been printed
 */
export function answer(words: string[]): boolean {
  const file = answerPlace(words);
  if (file === undefined) return false;
  const text = keptAnswer(file, { environment: process.env, here: process.cwd(), today: today() });
  if (text === null) return false;
  process.stdout.write(text);
  return true;
}
