import fc from 'fast-check';

/** Texts that try to take over a terminal or to hide what they say, beside ordinary ones in many scripts. */
export const hostileText = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 40 }),
  fc.string({ unit: 'grapheme', maxLength: 40 }),
  fc
    .array(
      fc.constantFrom(
        'sat well',
        ' ',
        '\u001B[2J',
        '\u001B]0;title\u0007',
        '\u009B31m',
        '\u202E',
        '\u2066',
        '\u200B',
        '\uFEFF',
        '\u0000',
        '\r',
        '\n',
        '\t',
        '\u2028',
        '\uD800',
        '\u0301',
        '\u3164',
        '巣箱',
        '👩‍🌾',
        '🐤',
        'é',
        '\u{E0041}',
      ),
      { maxLength: 12 },
    )
    .map((parts) => parts.join('')),
);

/** What no terminal may be sent: controls other than line ends, format characters, separators, lone surrogates. */
export const FORBIDDEN = /(?!\n)\p{Cc}|(?!\u200D)\p{Cf}|\p{Zl}|\p{Zp}|\p{Cs}/u;

/** The text without the colours that nestlog itself sets. */
export function withoutColour(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: an escape sequence begins with one
  return text.replace(/\u001B\[[\d;]*m/g, '');
}
