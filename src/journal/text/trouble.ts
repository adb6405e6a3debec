/** Why a stretch of text is no YAML, as far as that can be told in words that help. */
export type Why =
  | 'tab'
  | 'quote-open'
  | 'text-behind'
  | 'closed-twice'
  | 'comma-twice'
  | 'no-blank'
  | 'brace-open'
  | 'no-braces'
  | 'bracket-open'
  | 'colon-in-text'
  | 'reserved-sign'
  | 'backslash'
  | 'indent'
  | 'outside-log'
  | 'too-long'
  | 'too-deep'
  | 'other';

/** The first thing wrong with a stretch of text; the offset is counted from its beginning. */
export interface Trouble {
  why: Why;
  offset: number;
  /** The line that was probably meant, where that is known. */
  line?: string;
}

/** What we use of the library's errors. */
interface YamlError {
  code: string;
  message: string;
  pos: readonly [from: number, to: number];
}

type Rule = readonly [code: string, message: RegExp, why: Why];

/** First match wins; messages are looked at only where one code stands for several mistakes. */
const rules: readonly Rule[] = [
  ['TAB_AS_INDENT', /./, 'tab'],
  ['MISSING_CHAR', /quote/, 'quote-open'],
  ['MISSING_CHAR', /Sequence item/, 'indent'],
  ['MISSING_CHAR', /Comments must/, 'text-behind'],
  ['UNEXPECTED_TOKEN', /at node end/, 'text-behind'],
  ['UNEXPECTED_TOKEN', /flow-(?:map|seq)-end/, 'closed-twice'],
  ['UNEXPECTED_TOKEN', /Unexpected ,/, 'comma-twice'],
  ['BAD_INDENT', /Flow map/, 'brace-open'],
  ['BAD_INDENT', /Flow sequence/, 'bracket-open'],
  ['BLOCK_IN_FLOW', /./, 'colon-in-text'],
  ['BLOCK_AS_IMPLICIT_KEY', /./, 'colon-in-text'],
  ['BAD_SCALAR_START', /./, 'reserved-sign'],
  ['BAD_DQ_ESCAPE', /./, 'backslash'],
  ['BAD_INDENT', /./, 'indent'],
  ['MULTILINE_IMPLICIT_KEY', /./, 'indent'],
  ['RESOURCE_EXHAUSTION', /./, 'too-deep'],
];

const TAB_INDENT = /^ *\t/m;

const DASH_ALONE = /^[ \t]*-(?=[^\s-])/;

/** Puts the first error of the YAML library into our own terms. */
export function troubleOf(error: YamlError, text: string): Trouble {
  const rule = rules.find(([code, message]) => code === error.code && message.test(error.message));
  const tab = TAB_INDENT.exec(text);
  if (tab !== null) return { why: 'tab', offset: tab.index + tab[0].length - 1 };
  const why = rule?.[2] ?? 'other';
  return { why, offset: why === 'quote-open' ? openedAt(error, text) : error.pos[0] };
}

/** Where a quote stands that was never closed, maybe lines before the place where its end is missed. */
function openedAt({ message }: YamlError, text: string): number {
  return text.lastIndexOf(message.includes('"') ? '"' : "'");
}

/** Why a stretch that is some YAML is still no entry. */
export function notAnEntry(text: string): Trouble {
  const dash = DASH_ALONE.exec(text);
  return dash === null ? { why: 'other', offset: 0 } : { why: 'no-blank', offset: dash[0].length };
}
