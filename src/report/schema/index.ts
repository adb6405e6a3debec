import type { SchemaKind } from '../../journal/schema-files.ts';
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

/** The JSON Schema, draft 2020-12, of one kind of file of a room, as text. */
export function schemaText(kind: SchemaKind): string {
  const schema = {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    ...schemas[kind](),
    $defs: leaves,
  };
  return `${JSON.stringify(schema, null, 2)}\n`;
}
