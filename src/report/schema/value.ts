import * as z from 'zod';
import { MOST } from '../../journal/grammar/who.ts';
import { isLeaf, leaf } from './leaves.ts';
import type { Schema } from './schema.ts';

/** What a schema of the grammar says of itself; which of these it says depends on its shape. */
interface Meta {
  shape: string;
  description?: string;
  words: readonly string[];
  least: number;
  key: z.ZodType;
  value: z.ZodType;
  item?: z.ZodType;
  fields: Record<string, z.ZodType>;
}

/**
 * The JSON Schema of what may stand behind a key, made from the key's own grammar. The grammar's schemas read located
 * nodes, which JSON knows nothing of; what each of them takes is told by the shape that it names.
 */
export function valueSchema(type: z.ZodType): Schema {
  const { $schema: _, ...schema } = z.toJSONSchema(type, {
    io: 'input',
    unrepresentable: 'any',
    override: ({ jsonSchema }) => {
      const { shape } = jsonSchema as unknown as Partial<Meta>;
      if (shape === undefined) return;
      const meta = { ...jsonSchema } as unknown as Meta;
      for (const key of Object.keys(jsonSchema)) delete jsonSchema[key];
      Object.assign(jsonSchema, shaped(meta));
    },
  });
  return schema;
}

function shaped({ shape, description, ...meta }: Meta): Schema {
  const said = description === undefined ? {} : { description };
  if (isLeaf(shape)) return { ...said, ...leaf(shape) };
  const make = Object.hasOwn(composed, shape) ? composed[shape] : undefined;
  return { ...said, ...(make === undefined ? inner(meta) : make({ shape, ...meta })) };
}

/** What the schema got from the one that it is made of, without its words. */
function inner({ words, least, key, value, item, fields, ...schema }: Omit<Meta, 'shape'>): Schema {
  return schema;
}

/** Whom, in one text. */
const WHO_TEXT = (least: number) => `^(?![-−]\\s*\\d|\\d+[.,]${least === 0 ? '' : '|~?0+\\+?$'})\\s*\\S`;

const composed: Record<string, (meta: Meta) => Schema> = {
  empty: () => ({ type: 'null' }),
  word: ({ words }) => ({ enum: [...words] }),
  number: ({ least }) => ({
    anyOf: [
      {
        type: 'number',
        ...(least === 0 ? { minimum: 0 } : { exclusiveMinimum: 0 }),
        exclusiveMaximum: 1_000_000,
      },
      { type: 'string', pattern: `^${least === 0 ? '' : '(?=.*[1-9])'}\\d{1,6}(\\.\\d{1,15})?$` },
    ],
  }),
  'whole-number': ({ least }) => ({
    anyOf: [
      { type: 'integer', minimum: least, maximum: 999_999 },
      { type: 'string', pattern: least === 0 ? '^\\d{1,6}$' : '^(?=.*[1-9])\\d{1,6}$' },
    ],
  }),
  who: ({ least }) => ({
    anyOf: [
      { type: 'integer', minimum: least, maximum: MOST },
      { type: 'string', pattern: WHO_TEXT(least) },
      leaf('refs'),
    ],
  }),
  'who-key': () => ({ type: 'string', pattern: WHO_TEXT(1) }),
  'one-or-more': ({ shape, item, ...rest }) => {
    if (item === undefined) return inner(rest);
    const one = valueSchema(item);
    return { anyOf: [one, { type: 'array', minItems: 1, items: one }] };
  },
  map: ({ key, value }) => {
    const keys = valueSchema(key);
    const under = valueSchema(value);
    const words = keys.enum as string[] | undefined;
    return {
      type: 'object',
      minProperties: 1,
      ...(words === undefined
        ? { propertyNames: keys, additionalProperties: under }
        : {
            properties: Object.fromEntries(words.map((word) => [word, under])),
            additionalProperties: false,
          }),
    };
  },
  fields: ({ fields }) => ({
    type: 'object',
    minProperties: 1,
    properties: Object.fromEntries(Object.entries(fields).map(([key, under]) => [key, valueSchema(under)])),
    additionalProperties: false,
  }),
};
