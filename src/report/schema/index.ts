import { type SchemaKind, schemaFile, schemaKinds } from '../../journal/schema-files.ts';
import { birdsSchema, pairSchema, roomSchema } from './journals.ts';
import { leaves } from './leaves.ts';
import type { Schema } from './schema.ts';
import { speciesSchema } from './species.ts';

const schemas = {
  pair: pairSchema,
  birds: birdsSchema,
  room: roomSchema,
  species: speciesSchema,
} satisfies Record<SchemaKind, () => Schema>;

/** The schema of every kind of file, as the files in which editors find them. */
export function schemaFiles(): { path: string; text: string }[] {
  return schemaKinds.map((kind) => ({ path: schemaFile(kind), text: schemaText(kind) }));
}

/** The JSON Schema, draft 2020-12, of one kind of file of a room, as text. */
export function schemaText(kind: SchemaKind): string {
  const schema = {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    ...schemas[kind](),
    $defs: leaves,
  };
  return `${JSON.stringify(schema, null, 2)}\n`;
}
