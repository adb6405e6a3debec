import { SCHEMA_FOLDER, schemaKinds } from '../journal/schema-files.ts';
import { schemaFiles, schemaText } from '../report/schema/index.ts';
import { snippetsText } from '../report/schema/snippets.ts';
import type { CommandDefinition, Context, ExitCode } from './context.ts';
import { created } from './create.ts';
import { wordFrom } from './one-of.ts';
import { isRoom } from './room-folder.ts';
import { UsageError } from './usage-error.ts';

interface SchemaOptions {
  write?: true;
}

export const definition: CommandDefinition = {
  examples: [
    {
      line: 'nestlog schema --write',
      says: `all schemas into ${SCHEMA_FOLDER}/ of the room, where editors find them`,
    },
    { line: 'nestlog schema pair', says: 'the JSON Schema of a pair’s journal' },
    { line: 'nestlog schema snippets', says: 'an entry of today for every observation, for an editor' },
  ],
  arguments: [
    {
      name: '[kind]',
      description: `${schemaKinds.join(', ')} or snippets`,
      completes: [...schemaKinds, 'snippets'],
    },
  ],
  options: [{ flags: '--write', description: `write the schemas into ${SCHEMA_FOLDER}/ of the room` }],
  room: 'optional',
};

/** Prints what editors want to know of the journals, or puts it where they look for it. */
export function run({
  arguments: [kind],
  options,
  journals,
  stdout,
  stderr,
}: Context<SchemaOptions>): ExitCode {
  if (options.write) {
    if (kind !== undefined) throw new UsageError('--write writes all schemas; leave the kind out');
    if (!isRoom(journals)) {
      throw new UsageError('No room here to write the schemas into; name its folder with --journals.');
    }
    const files = schemaFiles();
    const place = { folder: journals, named: (path: string) => path, another: 'room' };
    if (!created({ stderr, options: { force: true } }, files, place)) return 1;
    for (const { path } of files) stdout.write(`${path}\n`);
  } else if (kind === undefined) {
    throw new UsageError(`which one? ${schemaKinds.join(', ')} or snippets; --write writes all schemas`);
  } else {
    const known = wordFrom([...schemaKinds, 'snippets'] as const, kind, 'the schemas are');
    stdout.write(known === 'snippets' ? snippetsText() : schemaText(known));
  }
  return 0;
}
