import type { FindingKind } from '../codes.ts';

/** What can be wrong with who is said to descend from whom. */
export const stockCodes = {
  'alike-names': {
    level: 'hint',
    text: ({ name, other }) =>
      `\`${name}\` and \`${other}\` differ only in capitals or blanks; they are taken for two`,
    hint: ({ other }) => `if it is the same one, write \`${other}\``,
  },
  'parent-younger': {
    level: 'error',
    text: ({ parent, role, bird, born, day }) =>
      `${parent} stands as ${role} of ${bird}, which hatched on ${born}, but hatched itself on ${day}; it is left out`,
    hint: () => 'another bird, or a slip in one of the dates',
  },
  'before-hatching': {
    level: 'error',
    text: ({ bird, day, hatched }) =>
      `${bird} had not hatched on ${day}: that was on ${hatched} at the earliest`,
    hint: () => 'correct one of the dates, or put the line into the log of another bird',
  },
  'one-parent-twice': {
    level: 'error',
    text: ({ parent, bird }) => `${parent} stands as sire and as dam of ${bird}; both are taken as unknown`,
    hint: () => 'two birds, or `unknown` for the one that nobody knows',
  },
  'no-such-parent': {
    level: 'error',
    text: ({ name, of }) => `\`${name}\`, named as parent in ${of}, is a chick that no journal has`,
    hint: () => 'PAIR/CLUTCH/CHICK such as LW-3/2/c1, an id of birds.yaml, a ring, or `unknown`',
  },
} as const satisfies Record<string, FindingKind>;
