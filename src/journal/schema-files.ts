/** The folder of a room in which the JSON Schemas for editors lie. */
export const SCHEMA_FOLDER = '.nestlog';

/** Kinds of files that a room has, one schema each. */
export const schemaKinds = ['pair', 'birds', 'room', 'species'] as const;

export type SchemaKind = (typeof schemaKinds)[number];

/** Where the schema of one kind of file lies, relative to the room. */
export function schemaFile(kind: SchemaKind): string {
  return `${SCHEMA_FOLDER}/${kind}.schema.json`;
}

/**
 * The comment by which editors with a YAML language server find the schema of the file that it stands in.
 *
 * @param path the file, relative to the room, with `/`
 * @example schemaLine('pair', 'pairs/LW-1.yaml') // '# yaml-language-server: $schema=../.nestlog/pair.schema.json'
 */
export function schemaLine(kind: SchemaKind, path: string): string {
  const up = '../'.repeat(path.split('/').length - 1);
  return `# yaml-language-server: $schema=${up}${schemaFile(kind)}`;
}
