import { type Trait, traitKeys, traits } from '../../species/traits.ts';
import { absent, grades } from '../../species/value.ts';
import { leaf } from './leaves.ts';
import type { Schema } from './schema.ts';

const FIGURE = '\\d{1,6}(\\.\\d{1,6})?';

/** A keeper's own profile, `species/*.yaml`: any of its keys, the others are inherited. */
export function speciesSchema(): Schema {
  const names: Schema = { anyOf: [leaf('text'), { type: 'array', items: leaf('text') }] };
  return {
    title: 'a species profile',
    type: 'object',
    properties: {
      species: { ...leaf('text'), description: 'common name', examples: ['lavender waxbill'] },
      scientific: {
        ...leaf('text'),
        description: 'scientific name',
        examples: ['Glaucestrilda caerulescens'],
      },
      also: { ...names, description: 'further names', examples: [['lavender finch']] },
      ...Object.fromEntries(traitKeys.map((key) => [traits[key].name, traitSchema(traits[key])])),
    },
    additionalProperties: false,
  };
}

/** One key: its value alone, or the long form with where it comes from. */
function traitSchema(trait: Trait): Schema {
  const { words, numbers, unit } = trait;
  const scalar = scalarSchema(trait);
  const kinds = numbers ? [`${unit}: a range such as 12-14, or one number`] : [];
  const example = words?.[0] ?? (trait.sign === 'any' ? '-2-5' : '12-14');
  return {
    description: [...kinds, ...(words === null ? [] : [words.join(', ')])].join('; or '),
    examples: [example, { range: example, source: 'own room', grade: 'common practice' }],
    anyOf: [
      scalar,
      {
        type: 'object',
        properties: {
          range: scalar,
          value: scalar,
          source: {
            ...leaf('text'),
            description: 'where the value comes from',
            examples: ['own room, 2024'],
          },
          grade: { enum: [...grades], description: 'how far the source can be trusted', examples: ['read'] },
          note: { ...leaf('text'), description: 'how to read the value', examples: ['counted from day 0'] },
        },
        additionalProperties: false,
      },
    ],
  };
}

/** A word, a number or a range; nothing, or one of the ways to write that nothing is known. */
function scalarSchema({ words, numbers, sign }: Trait): Schema {
  const written = [...absent].filter((text) => text !== '');
  const figure = sign === 'any' ? `-?${FIGURE}` : FIGURE;
  const least = sign === 'positive' ? { exclusiveMinimum: 0 } : sign === 'any' ? {} : { minimum: 0 };
  const range = { type: 'string' as const, pattern: `^\\s*${figure}(\\s*(-|–|to)\\s*${figure})?\\s*$` };
  return {
    anyOf: [
      { enum: [...(words ?? []), ...written, null] },
      ...(numbers ? [{ type: 'number' as const, ...least }, range] : []),
    ],
  };
}
