import type { FindingKind } from '../codes.ts';
import type { FindingArgs } from '../finding.ts';

/** The nearest word that could have been meant, else what there is. */
const meant = ({ key, suggestion, others, keys, where }: FindingArgs) =>
  where
    ? `\`${key}\` belongs in ${where}`
    : others
      ? `did you mean ${others}?`
      : suggestion
        ? `did you mean \`${suggestion}\`?`
        : `there are ${keys}`;

const ENTRY = '- {date: 2026-03-01, laid: 1, note: "first egg"}';

/** What can be wrong with keys and entries. */
export const entryCodes = {
  'unknown-key': { level: 'error', text: ({ key }) => `there is no key \`${key}\` here`, hint: meant },
  'colon-without-blank': {
    level: 'error',
    text: ({ key }) => `a blank is missing behind the colon of \`${key}\``,
    hint: ({ key, value }) => `write \`${key}: ${value}\``,
  },
  'bad-key': {
    level: 'error',
    text: () => 'a list or braces cannot be a key',
    hint: () =>
      'first the word, then its value: {clear: [e1, e3]}; names before a value in quotes: {"c1, c2": flight 3}',
  },
  'duplicate-key': {
    level: 'error',
    text: ({ key }) => `\`${key}\` stands here twice; only the first one counts`,
    hint: ({ listed }) =>
      listed
        ? 'was another one meant? Each stands in a list once'
        : 'put both into one, with [ ] for a list, or write a second entry',
  },
  'second-log': {
    level: 'error',
    text: () => '`log` stands here twice; the entries of both are read',
    hint: () => 'remove this line, so that all entries stand in one log',
  },
  'no-pair': {
    level: 'error',
    text: ({ name }) =>
      `the journal does not say which pair it is of; it is taken for \`${name}\`, after its file`,
    hint: ({ name }) => `begin it with:\npair: ${name}`,
  },
  'no-id': {
    level: 'error',
    text: () => 'this bird has no id',
    hint: () => 'give it one, such as\nid: LW-19-04',
  },
  'no-log': { level: 'hint', text: () => 'the journal has no log yet', hint: () => `add:\nlog:\n${ENTRY}` },
  'log-no-list': {
    level: 'error',
    text: () => 'the log is no list of entries',
    hint: ({ line }) => `each entry begins with a dash on a line of its own:\n${line || ENTRY}`,
  },
  'birds-no-list': {
    level: 'error',
    text: () => 'the birds are no list',
    hint: () => 'each bird begins with a dash:\n- {id: LW-19-04, species: lavender waxbill, sex: cock}',
  },
  'no-list': {
    level: 'error',
    text: ({ key }) => `\`${key}\` is no list`,
    hint: ({ line }) => `each item begins with a dash on a line of its own${line ? `:\n${line}` : ''}`,
  },
  'not-an-entry': {
    level: 'error',
    text: () => 'this is no entry',
    hint: ({ line }) => (line ? `write:\n${line}` : `an entry has a date and what was seen:\n${ENTRY}`),
  },
  'not-a-bird': {
    level: 'error',
    text: () => 'this is no bird',
    hint: () => 'a bird has keys:\n- {id: LW-19-04, species: lavender waxbill, sex: cock}',
  },
  'not-a-routine': {
    level: 'error',
    text: () => 'a routine needs a name, and `after` or `every`',
    hint: () =>
      '- {name: calcium, after: paired, days: 3, every: 2, until: laid, say: calcium in the egg food}',
  },
  'routine-never-ends': {
    level: 'error',
    text: ({ after, until }) =>
      after === ''
        ? `\`until: ${until}\` needs an \`after\` to begin with; it is passed over`
        : `what begins with \`after: ${after}\` cannot end with \`until: ${until}\`, which is passed over`,
    hint: ({ after }) =>
      after === 'arrived'
        ? 'of a bird that arrived, `until: paired` and `until: independent` are known'
        : 'a routine lasts from one thing to another:\n- {name: calcium, after: paired, every: 2, until: laid}',
  },
  'not-a-ring': {
    level: 'error',
    text: () => 'rings are told by size and number',
    hint: () => '- {mm: 2.3, in-hand: 12}',
  },
  'no-date': {
    level: 'error',
    text: () => 'the entry has no date, so it does not count',
    hint: () => 'begin it with its day, such as `date: 2026-03-01`',
  },
  'date-as-key': {
    level: 'error',
    text: () => 'the date stands without `date:`, so the entry does not count',
    hint: ({ line }) =>
      line === '' ? `an entry has a date and what was seen:\n${ENTRY}` : `write:\n${line}`,
  },
  'read-as': {
    level: 'hint',
    text: ({ key, meant, several }) => `\`${key}\` ${several ? 'are' : 'is'} read as \`${meant}\``,
    hint: ({ meant }) => `write \`${meant}\``,
  },
  'said-no': {
    level: 'error',
    text: ({ key }) => `\`${key}: no\` does not count: what was not seen is not written`,
    hint: () =>
      'remove it; a look that found nothing new is `checked`, eggs that nobody sits on are `sitting: off`',
  },
  'said-yes': {
    level: 'hint',
    text: ({ key }) => `\`${key}\` needs no yes`,
    hint: ({ key }) => `the word alone says it: \`${key}\``,
  },
  'empty-entry': {
    level: 'hint',
    text: () => 'the entry says nothing but its date',
    hint: () => 'a look at the nest that found nothing new is `checked`',
  },
  'same-entry': {
    level: 'hint',
    text: ({ line }) => `the same entry stands in line ${line}; it counts once`,
    hint: () => 'remove one of them; if two different birds or eggs were meant, say which: e1, c2',
  },
  'block-style': {
    level: 'hint',
    text: () => 'entries over several lines are read, but git can mix up two of them when it merges',
    hint: ({ line }) => `one entry a line:\n${line}`,
  },
  'unquoted-note': {
    level: 'hint',
    text: () => 'the note has no quotes, so all up to the end of the line is taken as the note',
    hint: ({ line }) => `${line}`,
  },
  'note-swallows': {
    level: 'error',
    text: ({ keys }) => `the note has no quotes, so it swallows ${keys} behind it, uncounted`,
    hint: ({ line }) => `${line}`,
  },
  'comma-in-map': {
    level: 'error',
    text: ({ key, joined }) =>
      `\`${key}\` stands alone behind a comma and ${joined ? 'is read as the rest of the text before it' : 'would be lost'}`,
    hint: ({ line }) =>
      line
        ? `write:\n${line}`
        : 'lists need [ ]: {clear: [e1, e3]}; decimals need a decimal point: 4.5; text with a comma needs quotes: "a, b"',
  },
} as const satisfies Record<string, FindingKind>;
