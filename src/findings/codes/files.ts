import { isBirdList, isProfile, isSettings } from '../../file-names.ts';
import type { FindingKind } from '../codes.ts';
import type { FindingArgs } from '../finding.ts';

const because = ({ detail }: FindingArgs) => (detail ? `: ${detail}` : '');

/** Why a stretch of text cannot be read, and what helps. */
const whys: Record<string, readonly [what: string, help: string]> = {
  tab: ['a tab stands where only blanks may', 'indent with blanks: most editors can turn tabs into blanks'],
  'quote-open': [
    'a quote is opened and never closed',
    'close it, or put the whole text in double quotes: "hen’s nest"',
  ],
  'text-behind': [
    'text follows where a quote or brace has closed',
    'put the quotes around the whole text, with \\" for those inside',
  ],
  'closed-twice': ['there is a } or ] too many', 'remove it'],
  'comma-twice': ['a comma has nothing behind it', 'remove it, or write what was meant'],
  'no-blank': ['a blank is missing behind the dash', 'write `- {`'],
  'brace-open': ['a { is never closed', 'end it with } on the same line'],
  'no-braces': ['the keys of one line stand between braces', 'put them between { and }'],
  'bracket-open': ['a [ is never closed', 'close the list with ]'],
  'colon-in-text': [
    'a second colon makes a second key',
    'is a comma missing? Else put text with a colon in double quotes: "off the nest: cold"',
  ],
  'reserved-sign': ['text cannot begin with this sign', 'put it in double quotes'],
  backslash: ['a backslash in double quotes needs another one', 'write \\\\ for a backslash'],
  indent: [
    'its lines do not stand under each other, or a colon is missing',
    'give all keys of one thing, and all items of one list, the same indentation',
  ],
  'outside-log': ['the entry stands in no log', 'put it below `log:`'],
  'too-long': [
    'the line is longer than 100,000 characters',
    'is this file really a journal? A note or a comment as long as that is a file of its own: say its name in the note',
  ],
  'too-deep': ['too much stands inside of each other', 'is this file really a journal?'],
  other: ['it is no entry, and no key with a value', 'one entry a line: - {date: 2026-03-01, laid: 1}'],
};

/** How a file begins that is no journal, and what is told otherwise of what it holds. */
const elsewhere: readonly { is(path: string): boolean; beginning: string; whys: typeof whys }[] = [
  {
    is: isBirdList,
    beginning: 'the list of birds begins with `birds:`, then one bird an item: `- id: LW-19-04`',
    whys: {
      other: ['it is no bird, and no key with a value', 'one bird a line: - {id: LW-19-04, sex: cock}'],
      'outside-log': [
        'it stands in no list',
        'put a bird below `birds:`, and an entry below the `log:` of its bird',
      ],
      'colon-in-text': [
        'a second colon makes a second key',
        'put text with a colon in double quotes: origin: "swapped: two for one"',
      ],
    },
  },
  {
    is: isSettings,
    beginning: 'the room’s settings begin with `room: the birdroom`',
    whys: {
      other: [
        'it is no item of a list, and no key with a value',
        'one key a line, such as `room: the birdroom`',
      ],
      'outside-log': ['it stands in no list', 'put it below `routines:`, `rings:` or `log:`'],
      'colon-in-text': [
        'a second colon makes a second key',
        'put text with a colon in double quotes: say: "fresh: each morning"',
      ],
    },
  },
  {
    is: isProfile,
    beginning:
      'a profile begins with `species: lavender waxbill`, then such as `incubation: 12-14`; each species has a file of its own',
    whys: {
      other: ['it is no key with a value', 'one key a line, such as `incubation: 12-14`'],
      'outside-log': ['a species has no list', 'one key a line, such as `incubation: 12-14`'],
      'colon-in-text': [
        'a second colon makes a second key',
        'put text with a colon in double quotes: source: "own book: 2024"',
      ],
    },
  },
];

const kindOf = ({ file }: FindingArgs) => elsewhere.find(({ is }) => is(String(file)));

function whyOf(args: FindingArgs): readonly [what: string, help: string] {
  const own = { ...whys, ...kindOf(args)?.whys };
  return own[String(args.why)] ?? (own.other as readonly [string, string]);
}

/** The line that was meant says more than what helps in general. */
const helpOf = (args: FindingArgs) => (args.line ? `write:\n${args.line}` : whyOf(args)[1]);

const beginning = 'a pair’s journal begins with `pair: LW-1`, then `log:` with one entry a line';

/** What can be wrong with a file, and with its YAML. */
export const fileCodes = {
  'file-unreadable': {
    level: 'error',
    text: (args) => `this file cannot be read${because(args)}`,
    hint: () => 'look at its permissions and where it links to; nothing in it counts until then',
  },
  'file-binary': {
    level: 'error',
    text: (args) => `this file is no text${because(args)}`,
    hint: () => 'save it as plain text in UTF-8, or give it another name than .yaml',
  },
  'file-too-large': {
    level: 'error',
    text: (args) => `this file is too large for a journal${because(args)}, the most is 20 MB`,
    hint: () => 'is it something else? Then move it out of this folder',
  },
  'file-loop': {
    level: 'error',
    text: () => 'this link leads back to itself or to a folder above it, so it is not followed',
    hint: () => 'remove the link, or let it lead to the folder that was meant',
  },
  'empty-file': {
    level: 'error',
    text: () => 'this file is empty',
    hint: () => 'if it had entries, fetch them from the backup or from git; if not, remove it',
  },
  'stray-journal': {
    level: 'error',
    text: ({ path, looks }) => `${path} looks like ${looks}, but nothing in it is read where it lies`,
    hint: ({ to }) => (to === 'birds.yaml' ? 'its birds belong in birds.yaml' : `move it to ${to}`),
  },
  'second-settings': {
    level: 'error',
    text: ({ file }) => `the room has its settings in ${file} already, so nothing in this file counts`,
    hint: ({ file }) => `put what it says into ${file} and remove it`,
  },
  'not-utf8': {
    level: 'error',
    text: () => 'letters were lost here: this file is not in UTF-8, or an editor has spoilt it',
    hint: () => 'save the file as UTF-8 and write the letter again; the rest of the file counts',
  },
  'not-a-mapping': {
    level: 'error',
    text: () => 'this file does not begin with keys and their values',
    hint: (args) => kindOf(args)?.beginning ?? beginning,
  },
  'several-documents': {
    level: 'error',
    text: () => 'the file ends here for nestlog: nothing behind this mark is read',
    hint: () => 'remove the line, or put what follows into a file of its own',
  },
  'yaml-feature': {
    level: 'error',
    text: ({ feature }) => `${article(feature)} ${feature} is something of YAML that journals do not use`,
    hint: () => 'write the value out, and put text that begins with & * ! or % in double quotes',
  },
  'conflict-mark': {
    level: 'error',
    text: () => 'git left a mark of conflict here; the lines of both sides are read',
    hint: () => 'remove the lines with <<<<<<<, ======= and >>>>>>>, and what is in there twice',
  },
  'tab-indent': {
    level: 'error',
    text: () => 'a tab stands where only blanks may; the entries count, but no other program will read them',
    hint: () => 'indent with blanks: most editors can turn tabs into blanks',
  },
  'unreadable-entry': {
    level: 'error',
    text: (args) => `this entry cannot be read: ${whyOf(args)[0]}`,
    hint: helpOf,
  },
  'unreadable-lines': {
    level: 'error',
    text: (args) => `this cannot be read: ${whyOf(args)[0]}`,
    hint: helpOf,
  },
} as const satisfies Record<string, FindingKind>;

function article(word: FindingArgs[string] | undefined): string {
  return /^[aeiou]/.test(String(word)) ? 'an' : 'a';
}
