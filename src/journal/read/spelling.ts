import type { Finding } from '../../findings/finding.ts';
import { nearest, plainWord } from '../../findings/nearest.ts';
import { calledSo, type Vocabulary } from '../grammar/vocabulary.ts';
import { Fields, List, type Node, Text } from '../nodes.ts';

/** Keys are small letters; a hyphen joins two words. Any other sign may be a matter of spelling. */
const OTHER_SIGN = /[^a-z-]/;

/**
 * Reads keys that can mean one thing only as that: those that are ours but for capitals, blanks, hyphens or underscores (a
 * phone begins each line with a capital), and other words for them. Each is a hint. A misspelt key over a list is an error,
 * but a year of entries is not lost with it. Where both stand, ours counts.
 */
export function asOurs(fields: Fields, words: Vocabulary, findings: Finding[]): Fields {
  const taken = new Set(fields.pairs.map(([key]) => key.text));
  let isOther = false;
  const pairs = fields.pairs.map(([key, value]): Fields['pairs'][number] => {
    if (Object.hasOwn(words, key.text)) return [key, value];
    const surely = meantBy(key.text, words);
    const meant = surely ?? (value instanceof List ? listMeant(key.text, value, words) : null);
    if (meant === null || taken.has(meant)) return [key, value];
    isOther = true;
    taken.add(meant);
    findings.push(
      surely === null
        ? { code: 'unknown-key', at: key.at, args: { key: key.text, suggestion: meant, keys: '' } }
        : { code: 'read-as', at: key.at, args: { key: key.text, meant } },
    );
    return [new Text(meant, key.at), value];
  });
  return isOther ? new Fields(pairs, fields.at, fields.style) : fields;
}

/**
 * Over entries the log is meant, however it is called. Keys without a value of their own hold lists: over another list one of
 * them is meant before any other.
 */
function listMeant(said: string, { items }: List, words: Vocabulary): string | null {
  const isEntry = (item: Node) => item instanceof Fields && item.pairs.some(([{ text }]) => text === 'date');
  if (Object.hasOwn(words, 'log') && items.some(isEntry)) return 'log';
  const keys = Object.keys(words);
  const lists = keys.filter((key) => words[key]?.value === undefined);
  return nearest(said, lists) ?? nearest(said, keys);
}

function meantBy(said: string, words: Vocabulary): string | null {
  const plain = plainWord(said);
  return Object.keys(words).find((key) => plainWord(key) === plain) ?? calledSo(said, words)[0] ?? null;
}

/** Whether all keys are written as ours are, so that none need be looked at. */
export function isPlainlyWritten({ pairs }: Fields): boolean {
  return !pairs.some(([{ text }]) => OTHER_SIGN.test(text));
}
