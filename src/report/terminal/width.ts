import stringWidth from 'string-width';

let segmenter: Intl.Segmenter | null = null;

/** The pieces of a text that a reader takes for one character. */
function graphemes(text: string): string[] {
  if (ONE_COLUMN.test(text)) return [...text];
  segmenter ??= new Intl.Segmenter('en', { granularity: 'grapheme' });
  return [...segmenter.segment(text)].map(({ segment }) => segment);
}

/** Letters and marks that take one column each: nearly all that is printed, and no need to load emoji tables for it. */
const ONE_COLUMN = /^[ -~\u00A0-\u00AC\u00AE-\u017F\u2010-\u2027\u2190-\u2193\u2212]*$/;

/** Columns that a text takes on a terminal; escape sequences of colours take none. */
export function widthOf(text: string): number {
  return ONE_COLUMN.test(text) ? text.length : stringWidth(text);
}

/** A text with blanks behind it up to the width; one that is wider stays as it is. */
export function pad(text: string, width: number): string {
  return text + ' '.repeat(Math.max(0, width - widthOf(text)));
}

/** The longest beginning of a text that fits into the width, never half a grapheme. */
function beginning(text: string, width: number): string {
  let taken = '';
  let used = 0;
  for (const segment of graphemes(text)) {
    used += widthOf(segment);
    if (used > width) break;
    taken += segment;
  }
  return taken;
}

/** A text cut at its end to the width, with `…` where something is missing. */
export function truncate(text: string, width: number): string {
  return widthOf(text) <= width ? text : `${beginning(text, width - 1)}…`;
}

/** A text cut at its beginning to the width, with `…` where something is missing. */
export function truncateStart(text: string, width: number): string {
  if (widthOf(text) <= width) return text;
  const segments = graphemes(text);
  let used = 1;
  let from = segments.length;
  while (from > 0 && used + widthOf(segments[from - 1] as string) <= width) {
    from -= 1;
    used += widthOf(segments[from] as string);
  }
  return `…${segments.slice(from).join('')}`;
}

/** Blanks at which a line is not broken: a number stays with its unit, a day with its month, a plus with its days. */
const GLUED =
  /(?<=\d) (?=(?:d|g|mm|Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)\b)|(?<=\d d) (?=late)|(?<= \+) (?=\d)/g;

interface Margins {
  /** Blanks before every line but the first; they count. */
  hanging?: number;
  /** Columns of the first line that are taken by what stands before the text. */
  taken?: number;
}

/** Phrases on as few lines as they take, with ` · ` between those that share a line; a long one is wrapped. */
export function flow(phrases: readonly string[], width: number): string[] {
  const lines: string[] = [];
  for (const phrase of phrases) {
    const longer = `${lines.at(-1)} · ${phrase}`;
    if (lines.length > 0 && widthOf(longer) <= width) lines.splice(-1, 1, longer);
    else lines.push(...wrap(phrase, width, { hanging: 2 }));
  }
  return lines;
}

/**
 * A text as lines of at most `width` columns, broken at blanks; a word wider than a line is broken between
 * graphemes. There is always a first line.
 */
export function wrap(text: string, width: number, { hanging = 0, taken = 0 }: Margins = {}): string[] {
  const lines: string[] = [];
  let line = '';
  let used = taken;
  let atStart = true;
  const put = (piece: string) => {
    line += piece;
    used += widthOf(piece);
    atStart = false;
  };
  const breakLine = () => {
    lines.push(line);
    line = ' '.repeat(hanging);
    used = hanging;
    atStart = true;
  };
  for (const word of text.replace(GLUED, '\u00A0').split(/ +/).filter(Boolean)) {
    if (!atStart && used + 1 + widthOf(word) > width) breakLine();
    let rest = atStart ? word : ` ${word}`;
    while (used + widthOf(rest) > width) {
      const piece = beginning(rest, width - used);
      if (piece === '') break;
      put(piece);
      breakLine();
      rest = rest.slice(piece.length);
    }
    put(rest);
  }
  lines.push(line);
  return lines.map((finished) => finished.replaceAll('\u00A0', ' '));
}
