/** Names that say more than a number does. */
const NAMES: Record<string, string> = {
  '\u0000': 'NUL',
  '\u0007': 'BEL',
  '\b': 'BS',
  '\t': 'TAB',
  '\r': 'CR',
  '\u001B': 'ESC',
  '\u007F': 'DEL',
};

/** Line breaks inside a value, with the blanks around them: wrapping puts its own in their place. */
const BREAKS = /(?<! ) *(?:\r\n|\n) */g;

/**
 * What a terminal acts on or swallows instead of showing it: controls (C0, DEL, C1), characters without a width of
 * their own such as bidi marks, zero-width spaces, variation selectors and fillers, separators of lines and
 * paragraphs, lone surrogates, and marks with nothing but a blank to sit on.
 * Two joiners stay where they build one picture: U+200D between pictographs and U+FE0F behind one.
 */
const UNSEEN =
  /(?!(?<=\p{Emoji})\uFE0F|(?<=\p{Emoji_Modifier}|\p{Extended_Pictographic}\uFE0F?)\u200D(?=\p{Extended_Pictographic}))[\p{Cc}\p{Cf}\p{Default_Ignorable_Code_Point}\p{Zl}\p{Zp}\p{Cs}]|(?<!\S)\p{M}/gu;

const PRINTABLE_ASCII = /^[ -~]*$/;

function named(character: string): string {
  const code = character.codePointAt(0) as number;
  return `<${NAMES[character] ?? `U+${code.toString(16).toUpperCase().padStart(4, '0')}`}>`;
}

/**
 * A text with nothing left in it that a terminal would obey or hide: `\u001B[2J` becomes `<ESC>[2J`. Line breaks
 * become a blank. Made visible twice, it stays the same.
 */
export function visible(text: string): string {
  if (PRINTABLE_ASCII.test(text)) return text;
  return text.replace(BREAKS, ' ').replace(UNSEEN, named);
}

/** The same for every text inside plain data, so that a renderer cannot forget one. */
export function visibleData<T>(data: T): T {
  if (typeof data === 'string') return visible(data) as T;
  if (Array.isArray(data)) return data.map(visibleData) as T;
  if (typeof data !== 'object' || data === null) return data;
  return Object.fromEntries(Object.entries(data).map(([key, value]) => [key, visibleData(value)])) as T;
}
