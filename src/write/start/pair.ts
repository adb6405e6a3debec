import { type Day, formatDay } from '../../days.ts';
import { scalar } from '../../journal/print.ts';
import { schemaLine } from '../../journal/schema-files.ts';
import { journalPath, printable, shellWord } from '../names.ts';
import type { NewFile } from '../new-files.ts';

/** What is known of a pair when its journal begins; null where nothing was said. */
export interface NewPair {
  pair: string;
  species: string;
  /** Several where it is one of these. */
  cock: string[];
  hen: string[];
  housing: string | null;
}

/** A first clutch as the comment tells it: days after the day of starting, what is written, what it means. */
const LESSON: [after: number, says: string, means: string][] = [
  [0, 'paired', 'put together'],
  [11, 'nest: building', ''],
  [18, 'clutch: 1, laid: 1', 'an egg'],
  [19, 'laid: 1', 'another one'],
  [21, 'laid: 2, sitting', 'days are counted from here: day 0'],
  [27, 'candled: {fertile: [e1, e3], clear: e2}', 'eggs by number, in laying order'],
  [33, 'hatched: 2, note: "both at noon"', ''],
];

/** The journal of a new pair, with a comment that teaches the first entries. `into` is a folder below `pairs/`, or empty. */
export function pairFile(said: NewPair, day: Day, into = ''): NewFile {
  const { pair, species, housing } = said;
  const path = journalPath(pair, into);
  const entries = LESSON.map(([after, says, means]) => {
    const entry = `- {date: ${formatDay(day + after)}, ${says}}`;
    return `#   ${means === '' ? entry : `${entry.padEnd(66)} ${means}`}`.trimEnd();
  });
  const lines = [
    schemaLine('pair', path),
    `# ${printable(pair)}, ${printable(species)}. One line a visit: the day, what you saw, and a note last and in double quotes.`,
    '# `nestlog record` writes such lines for you, and so may you, in any order. A first brood could read:',
    '#',
    ...entries,
    '#',
    `# The same in words: nestlog record ${shellWord(printable(pair))} laid=2 sitting`,
    `pair: ${scalar(pair)}`,
    `species: ${scalar(species)}`,
    `cock: ${parent(said.cock)}`,
    `hen: ${parent(said.hen)}`,
    ...(housing === null ? [] : [`housing: ${scalar(housing)}`]),
    'log:',
  ];
  return { path, text: `${lines.join('\n')}\n` };
}

function parent(names: readonly string[]): string {
  const [only = 'unknown', ...others] = names;
  return others.length === 0 ? scalar(only) : `[${names.map(scalar).join(', ')}]`;
}
