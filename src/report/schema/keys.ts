import { parse } from 'yaml';
import type { KeyDefinition, KeyTable } from '../../journal/grammar/key.ts';
import { circumstances, type VisitGrammar } from '../../journal/read/visit.ts';
import { leaf } from './leaves.ts';
import type { Schema } from './schema.ts';
import { valueSchema } from './value.ts';

/** The schema of one key: what it takes and means, and an example. */
function keySchema({ value, takes, example }: KeyDefinition, doc?: string): Schema {
  const description = doc === undefined ? takes : `${doc}\n\n${takes}`;
  return { ...valueSchema(value), description, examples: [exampleValue(example)] };
}

/** The value behind the key of an example as an editor reads it: `paired` is `null`, `laid: 1` is 1. */
function exampleValue(example: string): unknown {
  const [value] = Object.values(parse(`{${example}}`) as Record<string, unknown>);
  return value ?? null;
}

/** Keys that may be left without a value: then they say nothing. */
export function optionalKeys(table: KeyTable): Record<string, Schema> {
  const schemas = Object.entries(table).map(([key, definition]) => {
    const { description, examples, ...taken } = keySchema(definition);
    return [key, { description, examples, anyOf: [taken, { type: 'null' }] }];
  });
  return Object.fromEntries(schemas);
}

/** A log: a list of entries with a date, and what its grammar lets them say. */
export function logSchema({ circumstances: allowed, observations }: VisitGrammar): Schema {
  const about = Object.fromEntries(allowed.map((key) => [key, circumstances[key]]));
  const seen = Object.entries(observations).map(([key, definition]) => [
    key,
    keySchema(definition, definition.doc),
  ]);
  const entry: Schema = {
    type: 'object',
    required: ['date'],
    properties: {
      date: { ...leaf('date'), description: 'the day of the visit, YYYY-MM-DD', examples: ['2026-03-01'] },
      ...optionalKeys(about),
      ...Object.fromEntries(seen),
    },
    additionalProperties: false,
  };
  const [first] = Object.values(observations);
  const example = parse(`{date: 2026-03-01, ${first?.example}, note: "as a visit is written"}`);
  return listSchema(entry, 'one entry a visit, one line an entry', [example]);
}

/** A list that may still be empty. */
export function listSchema(items: Schema, description: string, example: unknown[]): Schema {
  return { description, examples: [example], type: ['array', 'null'], items };
}
