import { Empty, Fields, List, type Node, Text } from '../journal/nodes.ts';
import type { VisitGrammar } from '../journal/read/visit.ts';
import { Lines } from '../journal/text/lines.ts';
import { parseYaml } from '../journal/text/yaml.ts';
import { keyMeant } from './key-meant.ts';

/** Text that a shell leaves as it is. */
const BARE = /^[\p{L}\p{N}.,~+/:-]+$/u;

/**
 * What a line of a journal, or a value in braces, is at the terminal; null where the text is none.
 *
 * @example terminalWords('- {date: 2026-05-01, candled: {fertile: [e1, e2]}}', pairLog)
 * // 'candled.fertile=e1,e2 --date 2026-05-01'
 */
export function terminalWords(text: string, grammar: VisitGrammar): string | null {
  const line = text
    .trim()
    .replace(/^-\s*/, '')
    .replace(/^([\w-]+)=(?=\s*\{)/, '$1: ');
  const braced = line.startsWith('{') ? line : `{${line}}`;
  const parsed = parseYaml(new Lines('', braced), { text: braced, base: 0 });
  if (!('root' in parsed) || !(parsed.root instanceof Fields)) return null;
  const words: string[] = [];
  const dates: string[] = [];
  for (const [{ text: said }, value] of parsed.root.pairs) {
    if (/^date$/i.test(said) && value instanceof Text) dates.push(`--date ${value.text}`);
    else {
      const key = keyMeant(said, grammar);
      const spoken = key === null ? null : wordsFor(key, value);
      if (spoken === null) return null;
      words.push(...spoken);
    }
  }
  return words.length === 0 ? null : [...words, ...dates].join(' ');
}

function wordsFor(key: string, value: Node): string[] | null {
  if (!(value instanceof Fields)) {
    const said = saidIn(value);
    return said === null ? null : [word(key, said)];
  }
  const words = value.pairs.map(([part, of]) => {
    const said = saidIn(of);
    return said === null || said === '' ? null : word(`${key}.${part.text}`, said);
  });
  return words.length === 0 || words.includes(null) ? null : (words as string[]);
}

/** Empty where nothing stands behind the key, null where what stands there is no value of the terminal. */
function saidIn(value: Node): string | null {
  if (value instanceof Empty) return '';
  if (value instanceof Text) return value.text;
  if (!(value instanceof List) || value.items.some((item) => !(item instanceof Text))) return null;
  return value.items.map((item) => (item as Text).text).join(',');
}

function word(place: string, said: string): string {
  if (said === '') return place;
  const safe = said.replace(/["\\$`]/g, '\\$&');
  if (!BARE.test(place)) return `"${place}=${safe}"`;
  return BARE.test(said) ? `${place}=${said}` : `${place}="${safe}"`;
}
