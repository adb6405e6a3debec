import type { Schema } from './schema.ts';

const COUNT = '(\\d+\\+?|~\\d+|some)';

/** Numbers as editors read them, and as text where somebody put them in quotes. */
const numberOr = (least: Schema, pattern: string): Schema => ({
  anyOf: [
    { type: 'number', ...least },
    { type: 'string', pattern },
  ],
});

/**
 * What the simplest values of the grammar may be, by the shape that the grammar names. Editors turn `2` into a number
 * and leave `014 a` as text, so both are taken wherever the grammar reads text.
 */
export const leaves = {
  text: { type: ['string', 'number'], pattern: '\\S' },
  'one-name': { type: ['string', 'number'], pattern: '^(?!.*\\sor\\s)\\s*[^,\\s][^,]*$' },
  date: { type: 'string', format: 'date', pattern: '^\\s*\\d{4}-\\d{2}-\\d{2}\\s*$' },
  period: {
    anyOf: [
      { type: 'integer', minimum: 1950, maximum: 9999 },
      { type: 'string', pattern: '^\\s*\\d{4}(-\\d{2}(-\\d{2})?)?\\s*$' },
    ],
  },
  time: { type: 'string', pattern: '^([01]?\\d|2[0-3]):[0-5]\\d$' },
  moment: {
    type: 'string',
    pattern: '^(\\d{4}-\\d{2}-\\d{2}([T ]+([01]?\\d|2[0-3]):[0-5]\\d)?|([01]?\\d|2[0-3]):[0-5]\\d)$',
  },
  'month-and-date': { type: 'string', pattern: '^(0[1-9]|1[0-2])-(0[1-9]|[12]\\d|3[01])$' },
  share: numberOr({ minimum: 0, maximum: 1 }, '^(\\d+(\\.\\d+)?|\\.\\d+)\\s*%?$'),
  minutes: numberOr({ exclusiveMinimum: 0 }, '^(\\d{1,4}(\\.\\d+)?\\s*(h|min)?|\\d{1,2}:[0-5]\\d)$'),
  size: { type: 'string', pattern: '^\\d{1,6}(\\.\\d{1,15})?\\s*[x×]\\s*\\d{1,6}(\\.\\d{1,15})?$' },
  count: {
    anyOf: [
      { type: 'integer', minimum: 0 },
      { type: 'string', pattern: `^${COUNT}$` },
    ],
  },
  ref: { type: ['string', 'number'], pattern: '\\S' },
  refs: {
    type: 'array',
    minItems: 1,
    items: { type: 'string', pattern: `^(?!(all|${COUNT})$)\\S` },
  },
  name: {
    type: 'string',
    pattern: `^(?!(all|hand|incubator|unknown|cock|hen|both|${COUNT}|[ec][1-9]\\d*)$)(?!ring:)[^/]*[^/\\s][^/]*$`,
  },
} satisfies Record<string, Schema>;

export type Leaf = keyof typeof leaves;

export const isLeaf = (shape: string): shape is Leaf => Object.hasOwn(leaves, shape);

export const leaf = (name: Leaf): Schema => ({ $ref: `#/$defs/${name}` });
