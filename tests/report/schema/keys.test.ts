import { expect, test } from 'vitest';
import { text } from '../../../src/journal/grammar/values.ts';
import { observations } from '../../../src/journal/observations/index.ts';
import { listSchema, logSchema, optionalKeys } from '../../../src/report/schema/keys.ts';

test('a key may be left empty, and has its words and example', () => {
  const keys = { housing: { value: text, example: 'housing: flight 2', takes: 'cage, flight or aviary' } };
  expect(optionalKeys(keys)).toEqual({
    housing: {
      description: 'cage, flight or aviary',
      examples: ['flight 2'],
      anyOf: [{ $ref: '#/$defs/text' }, { type: 'null' }],
    },
  });
});

test('an entry has a date, its circumstances and what was seen, and nothing else', () => {
  const { items } = logSchema({ circumstances: ['note'], observations: { laid: observations.laid } });
  const entry = items as { properties: Record<string, { description: string; examples: unknown[] }> };
  expect(entry).toMatchObject({ required: ['date'], additionalProperties: false });
  expect(Object.keys(entry.properties)).toEqual(['date', 'note', 'laid']);
  expect(entry.properties.laid).toMatchObject({
    description: 'eggs new in the nest\n\nhow many new eggs, or which: e3',
    examples: [1],
  });
});

test('a list may still be empty', () => {
  expect(listSchema({}, 'things', []).type).toEqual(['array', 'null']);
});
