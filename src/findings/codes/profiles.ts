import type { FindingKind } from '../codes.ts';

/** What can be wrong with a keeper's own species profile. */
export const profileCodes = {
  'profile-not-a-name': {
    level: 'error',
    text: ({ key }) => `\`${key}\` takes a name`,
    hint: () => 'such as `species: lavender waxbill`',
  },
  'profile-unknown-key': {
    level: 'error',
    text: ({ key }) => `a species profile has no \`${key}\``,
    hint: ({ suggestion, own, key }) =>
      own
        ? `each species has a file of its own: put it into ${own}, which begins with \`species: ${key}\``
        : suggestion
          ? `did you mean \`${suggestion}\`?`
          : '`nestlog species` shows the keys that there are',
  },
  'profile-unknown-word': {
    level: 'error',
    text: ({ text, key }) => `\`${text}\` is not a word known for \`${key}\``,
    hint: ({ suggestion, words }) => (suggestion ? `did you mean \`${suggestion}\`?` : `one of ${words}`),
  },
  'profile-not-a-number': {
    level: 'error',
    text: ({ text, key, unit }) => `\`${text}\` is no number or range of ${unit} for \`${key}\``,
    hint: ({ key, suggestion, example }) =>
      suggestion ? `write \`${key}: ${suggestion}\`` : `such as \`${key}: ${example}\``,
  },
  'profile-not-positive': {
    level: 'error',
    text: ({ text, key }) => `\`${key}\` cannot be ${text}`,
    hint: ({ unit }) => `it is a number of ${unit} above zero`,
  },
  'profile-reversed': {
    level: 'error',
    text: ({ text, key }) => `\`${key}: ${text}\` ends before it begins`,
    hint: ({ key, low, high }) => `write \`${key}: ${high}-${low}\``,
  },
  'profile-missing': {
    level: 'hint',
    text: () =>
      'neither this file nor a shipped profile knows the `incubation`, so no hatching can be expected',
    hint: () => 'such as `incubation: 12-14`',
  },
  'profile-alike': {
    level: 'hint',
    text: ({ text }) => `no shipped profile is called \`${text}\`, so this file corrects none`,
    hint: ({ suggestion }) =>
      suggestion
        ? `did you mean \`species: ${suggestion}\`? If it is another bird, give its name in \`scientific:\``
        : 'begin it with the name, such as `species: lavender waxbill`',
  },
  'profile-absurd': {
    level: 'error',
    text: ({ key, text, unit, reason }) =>
      `\`${key}: ${text}\`${unit ? ` (${unit})` : ''} cannot be, and is left out: ${reason}`,
    hint: () => null,
  },
  'profile-doubtful': {
    level: 'hint',
    text: ({ key, text, unit, reason }) =>
      `\`${key}: ${text}\`${unit ? ` (${unit})` : ''} is used, but doubtful: ${reason}`,
    hint: () => 'if it is right, say where it comes from: {range: …, source: …}',
  },
} as const satisfies Record<string, FindingKind>;
