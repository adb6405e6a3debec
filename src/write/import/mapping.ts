import { isError, kindOf } from '../../findings/codes.ts';
import type { Finding } from '../../findings/finding.ts';
import type { KeyTable } from '../../journal/grammar/key.ts';
import { map, oneOrMore, text, word } from '../../journal/grammar/values.ts';
import type { Vocabulary } from '../../journal/grammar/vocabulary.ts';
import { Empty, Fields, List, type Node, Text } from '../../journal/nodes.ts';
import { pairLog } from '../../journal/pair-journal.ts';
import { readKeys, unknownKey } from '../../journal/read/keys.ts';
import { asOurs } from '../../journal/read/spelling.ts';
import { readTree } from '../../journal/text/tree.ts';
import { type DateOrder, dateOrders, type SerialSystem, serialSystems } from './date-forms.ts';
import { type ImportProblem, problemIn } from './problem.ts';
import { type Separator, separators } from './table.ts';
import { plainHeading, type Template, templateOf } from './template.ts';

/** Which rows something is for: those whose cell in the column is one of these words. */
export type Condition = { heading: string; words: ReadonlySet<string> }[];

/** One entry of a journal with columns for what differs from row to row. */
export interface EntryTemplate {
  line: number;
  when: Condition;
  /** All keys but `when`. */
  fields: Fields;
}

/** What a journal says of the pair itself, in the order in which it is written. */
export const headerKeys = ['pair', 'species', 'cock', 'hen', 'housing', 'nest-looks'] as const;

export type HeaderKey = (typeof headerKeys)[number];

/** How the rows of a table become journals. */
export interface Mapping {
  file: string;
  /** Whether a row is a whole clutch or one event. */
  rows: 'clutches' | 'events';
  separator: Separator | null;
  dates: DateOrder | null;
  serials: SerialSystem | null;
  nothing: ReadonlySet<string>;
  words: ReadonlyMap<string, ReadonlyMap<string, string>>;
  header: ReadonlyMap<HeaderKey, Template>;
  skip: Condition;
  log: EntryTemplate[];
}

const header = (key: string) => ({
  value: text,
  example: `${key}: <${key}>`,
  takes: `text, with <headings> of the table in it`,
});

const keys = {
  rows: { value: word('clutches', 'events'), example: 'rows: clutches', takes: 'clutches or events' },
  separator: {
    value: word(...(Object.keys(separators) as Separator[])),
    example: 'separator: semicolon',
    takes: Object.keys(separators).join(', '),
  },
  dates: { value: word(...dateOrders), example: 'dates: day-first', takes: dateOrders.join(', ') },
  'excel-dates': { value: word(...serialSystems), example: 'excel-dates: 1900', takes: '1900 or 1904' },
  nothing: { value: oneOrMore(text), example: 'nothing: [NA, "-"]', takes: 'what empty cells say' },
  pair: header('pair'),
  species: header('species'),
  cock: header('cock'),
  hen: header('hen'),
  housing: header('housing'),
  'nest-looks': header('nest-looks'),
  words: {
    value: map(text, map(text, text)),
    example: 'words: {sex: {m: cock, f: hen}}',
    takes: '{heading: {in the table: in the journal}}',
  },
  skip: {
    value: map(text, oneOrMore(text)),
    example: 'skip: {what: [weather, holiday]}',
    takes: '{heading: words}: rows that are left out',
  },
} as const satisfies KeyTable;

const whenValue = {
  value: map(text, oneOrMore(text)),
  example: 'when: {what: hatched}',
  takes: '{heading: words}: rows that the entry is for',
};

const entryWords: Vocabulary = {
  ...Object.fromEntries(['date', ...pairLog.circumstances, 'when'].map((key) => [key, {}])),
  ...pairLog.observations,
};
const entryKeys = Object.keys(entryWords);

/** Reads a mapping. What is wrong with it is a problem at its line; then there is no mapping. */
export function readMapping(file: string, source: string, problems: ImportProblem[]): Mapping | null {
  const { root, findings } = readTree(file, source, { log: 'entries' });
  if (root === null) {
    problems.push(
      ...(findings.length === 0 ? [problemIn(file, {}, 'the mapping is empty')] : problemsOf(findings)),
    );
    return null;
  }
  const fields = asOurs(root, { ...keys, log: {} }, findings);
  const said = readKeys(fields, keys, ['log'], findings);
  const log = fields.pairs.flatMap(([key, value]) => (key.text === 'log' ? logOf(value, findings) : []));
  problems.push(...problemsOf(findings));
  // Of one that stands there with a slip in it the slip is told.
  const missing = (key: string, hint: string) => {
    const stands = fields.pairs.some(([{ text: name }, value]) => name === key && value instanceof Text);
    if (!stands) problems.push(problemIn(file, {}, `\`${key}:\` is missing`, hint));
  };
  if (said.pair === null) missing('pair', 'name the column with the pair: `pair: <Pair>`');
  if (said.rows === null) missing('rows', 'write `rows: clutches` or `rows: events`: what one row is');
  if (log.length === 0) missing('log', 'entries as in a journal: `- {date: <Laid>, laid: <Eggs>}`');
  if (problems.length > 0 || said.rows === null) return null;
  return {
    file,
    rows: said.rows,
    separator: said.separator,
    dates: said.dates,
    serials: said['excel-dates'],
    nothing: new Set(said.nothing?.map(({ text: word }) => word.toLowerCase())),
    words: new Map(
      said.words?.map(([heading, pairs]) => [
        plainHeading(heading.text),
        new Map(pairs.map(([from, to]) => [from.text.toLowerCase(), to.text])),
      ]),
    ),
    header: new Map(
      headerKeys.flatMap((key) => {
        const value = said[key];
        return value === null ? [] : [[key, templateOf(value.text)]];
      }),
    ),
    skip: conditionOf(said.skip ?? []),
    log,
  };
}

function logOf(value: Node, findings: Finding[]): EntryTemplate[] {
  if (!(value instanceof List)) {
    if (!(value instanceof Empty)) findings.push({ code: 'log-no-list', at: value.at, args: {} });
    return [];
  }
  return value.items.flatMap((item) => {
    if (!(item instanceof Fields)) {
      findings.push({ code: 'not-an-entry', at: item.at, args: {} });
      return [];
    }
    const { pairs } = asOurs(item, entryWords, findings);
    const others = pairs.filter(([key]) => key.text !== 'when');
    if (!others.some(([key, date]) => key.text === 'date' && date instanceof Text)) {
      findings.push({ code: 'no-date', at: item.at, args: {} });
    }
    for (const [key] of others) if (!entryKeys.includes(key.text)) findings.push(unknownKey(key, entryKeys));
    const only = new Fields(
      pairs.filter(([key]) => key.text === 'when'),
      item.at,
    );
    const { when } = readKeys(only, { when: whenValue }, [], findings);
    return [{ line: item.at.line, when: conditionOf(when ?? []), fields: new Fields(others, item.at) }];
  });
}

function conditionOf(pairs: readonly (readonly [{ text: string }, { text: string }[]])[]): Condition {
  return pairs.map(([heading, words]) => ({
    heading: heading.text,
    words: new Set(words.map((one) => one.text.toLowerCase())),
  }));
}

/** Errors of the mapping's text, as an import's problems. */
function problemsOf(findings: readonly Finding[]): ImportProblem[] {
  return findings.filter(isError).map((finding) => {
    const { text, hint } = kindOf(finding);
    const { at, args } = finding;
    return problemIn(at.file, { line: at.line }, text(args), hint(args));
  });
}
