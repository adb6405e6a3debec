import type { FindingKind } from '../codes.ts';

/** What can be wrong with the text of a file, before anything is understood. */
export const readingCodes = {
  'zero-count': {
    level: 'error',
    text: () => '0 says that nothing was seen',
    hint: () => 'leave the observation out; only `candled` and `checked` may say 0',
  },
  'absurd-count': { level: 'error', text: ({ count }) => `${count} is more than one nest can hold`, hint: () => null },
  'negative-count': { level: 'error', text: ({ text }) => `${text} is less than none`, hint: () => null },
  'not-a-who': { level: 'error', text: ({ text }) => `\`${text}\` is neither a count nor a ref`, hint: () => 'a count (2), a ref (e1), a list ([e1, e2]) or all' },
  'not-a-ref': { level: 'error', text: ({ text }) => `\`${text}\` is not a ref`, hint: () => 'a list names eggs or chicks: [e1, e2]' },
  'not-a-count': { level: 'error', text: ({ text }) => `\`${text}\` is not a count`, hint: () => 'write digits: 2' },
  'not-a-number': { level: 'error', text: ({ text, unit }) => `\`${text}\` is not a number of ${unit}`, hint: () => 'use a decimal point: 4.5' },
  'not-a-size': { level: 'error', text: ({ text }) => `\`${text}\` is not an egg's size`, hint: () => 'length x breadth in mm: 14.2 x 10.8' },
  'empty-list': { level: 'error', text: () => 'the list is empty', hint: () => null },
  'empty-map': { level: 'error', text: () => 'the braces are empty', hint: () => null },
  'empty-text': { level: 'error', text: () => 'the quotes are empty', hint: () => null },
  'unknown-word': { level: 'error', text: ({ word }) => `\`${word}\` is not a word known here`, hint: ({ words }) => `one of: ${words}` },
  'unknown-field': { level: 'error', text: ({ key }) => `\`${key}\` is not known here`, hint: ({ keys }) => `one of: ${keys}` },
  'comma-in-map': { level: 'error', text: ({ key }) => `\`${key}\` stands alone behind a comma and would be lost`, hint: () => 'lists need [ ]: {clear: [e1, e3]}; decimals need a point: 4.5' },
} as const satisfies Record<string, FindingKind>;
