import type { CommandOption } from './context.ts';
import { meant } from './meant.ts';
import { UsageError } from './usage-error.ts';

/**
 * An option that takes one of a few words: a shell offers them, and where another is given, the one that was probably
 * meant is named.
 *
 * @param flags as commander reads them: `--by <what>`
 */
export function oneOf(
  flags: string,
  words: readonly string[],
  description = words.join(', '),
): CommandOption {
  const [flag] = flags.split(' ');
  return { flags, description, completes: words, parse: (text) => wordFrom(words, text, `${flag} takes`) };
}

/**
 * The word of a few that was given. Another is wrong usage, answered with all of them and the one that was probably meant.
 *
 * @param what takes them, as the beginning of a sentence: `--by takes`
 * @param more behind the words, such as what else there is
 */
export function wordFrom<Word extends string>(
  words: readonly Word[],
  text: string,
  what: string,
  more = '',
): Word {
  const word = words.find((one) => one === text);
  if (word !== undefined) return word;
  const near = meant(text, words, '');
  throw new UsageError(
    `${what} ${words.join(', ')}${more}, not \`${text}\`${near === '' ? '' : `; ${near}`}`,
  );
}
