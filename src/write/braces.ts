/** The end of a list in [ ] or a map in { }, found without reading what it means. */
export interface FlowEnd {
  /** Behind its last item, or behind the opening sign of one that is empty. */
  last: number;
  /** What stands there: the opening sign, a comma behind the last item, or something else. */
  sign: string;
}

const OPENING = '[{';
const CLOSING = ']}';

/** Where one more item would go; null where the closing sign is missing. */
export function flowEnd(text: string, open: number): FlowEnd | null {
  let depth = 0;
  let last = open + 1;
  for (let at = open; at < text.length; at++) {
    const sign = text[at] as string;
    if (/\s/.test(sign)) continue;
    if (sign === '#' && /\s/.test(text[at - 1] ?? ' ')) {
      at = endOfLine(text, at);
      continue;
    }
    if (OPENING.includes(sign)) depth++;
    else if (CLOSING.includes(sign) && --depth === 0) return { last, sign: text[last - 1] as string };
    else if ((sign === '"' || sign === "'") && /[\s[{,:]/.test(text[at - 1] ?? ''))
      at = endOfQuotes(text, at);
    last = at + 1;
  }
  return null;
}

function endOfLine(text: string, from: number): number {
  const length = text.slice(from).search(/[\r\n]/);
  return length < 0 ? text.length : from + length;
}

/** The closing one of the quotes that open here. */
function endOfQuotes(text: string, open: number): number {
  const quoted = text[open] === '"' ? /"(?:[^"\\]|\\[\s\S])*"/y : /'(?:[^']|'')*'/y;
  quoted.lastIndex = open;
  return quoted.test(text) ? quoted.lastIndex - 1 : open;
}
