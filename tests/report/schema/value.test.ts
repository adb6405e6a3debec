import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { parents } from '../../../src/journal/grammar/names.ts';
import {
  empty,
  fields,
  map,
  number,
  oneOrMore,
  text,
  wholeNumber,
  word,
} from '../../../src/journal/grammar/values.ts';
import { who, whoOrNone } from '../../../src/journal/grammar/who.ts';
import { valueSchema } from '../../../src/report/schema/value.ts';

// Whether files are taken and refused by these is tested with ajv in tests/published/json-schema.test.ts.

const textRef = { $ref: '#/$defs/text', description: 'text' };

describe('a value of the grammar as JSON Schema', () => {
  test('a word is one of a few', () => {
    expect(valueSchema(word('cock', 'hen'))).toEqual({ description: 'cock, hen', enum: ['cock', 'hen'] });
  });

  test('what the reader makes of it afterwards is left out', () => {
    expect(valueSchema(word('cock').transform(() => 1))).toEqual(valueSchema(word('cock')));
    expect(valueSchema(z.union([empty.transform(() => 0), text]))).toEqual({
      anyOf: [{ description: 'nothing', type: 'null' }, textRef],
    });
  });

  test('one or more is one, or a list of them', () => {
    const list = { anyOf: [textRef, { type: 'array', minItems: 1, items: textRef }] };
    expect(valueSchema(oneOrMore(text))).toEqual(list);
    const name = { $ref: '#/$defs/one-name', description: 'a bird' };
    expect(valueSchema(parents)).toEqual({
      anyOf: [name, { type: 'array', minItems: 1, items: name }],
      description: 'a bird, or a list of birds',
    });
  });

  test('a map of words has them as its keys', () => {
    const schema = valueSchema(map(word('full', 'thin'), text));
    expect(schema).toEqual({
      type: 'object',
      minProperties: 1,
      properties: { full: textRef, thin: textRef },
      additionalProperties: false,
    });
  });

  test('a map of refs has any key that is one', () => {
    expect(valueSchema(map(text, text))).toEqual({
      type: 'object',
      minProperties: 1,
      propertyNames: textRef,
      additionalProperties: textRef,
    });
  });

  test('known keys are each their own', () => {
    expect(valueSchema(fields({ by: text })).properties).toEqual({ by: textRef });
  });

  test('numbers keep their least', () => {
    expect(valueSchema(wholeNumber(1)).anyOf?.[0]).toMatchObject({ type: 'integer', minimum: 1 });
    expect(valueSchema(number('grams')).anyOf?.[0]).toMatchObject({ type: 'number', exclusiveMinimum: 0 });
    expect(valueSchema(number('days', 0)).anyOf?.[0]).toMatchObject({ type: 'number', minimum: 0 });
    expect(valueSchema(who).anyOf?.[0]).toMatchObject({ minimum: 1, maximum: 40 });
    expect(valueSchema(whoOrNone).anyOf?.[0]).toMatchObject({ minimum: 0 });
    const inQuotes = (schema: ReturnType<typeof valueSchema>) =>
      ['0', '2', 'some'].filter((said) => new RegExp(schema.anyOf?.[1]?.pattern ?? '').test(said));
    expect(inQuotes(valueSchema(whoOrNone))).toEqual(['0', '2', 'some']);
    expect(inQuotes(valueSchema(who))).toEqual(['2', 'some']);
  });
});
