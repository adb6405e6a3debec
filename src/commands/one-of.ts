import { nearest } from '../findings/nearest.ts';
import type { CommandOption } from './context.ts';
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
  const parse = (text: string): string => {
    if (words.includes(text)) return text;
    const near = nearest(text, words);
    const more = near === null ? '' : `; did you mean \`${near}\`?`;
    throw new UsageError(`${flag} takes ${words.join(', ')}, not \`${text}\`${more}`);
  };
  return { flags, description, completes: words, parse };
}
