import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { run, writeSchemas } from '../../src/commands/schema.ts';
import { schemaText } from '../../src/report/schema/index.ts';
import { roomFolder, runCommand } from './run.ts';

const schema = (kind?: string, options = {}) =>
  runCommand({ run }, {}, { arguments: kind === undefined ? [] : [kind], options });

test('prints the schema of one kind of file, or the snippets', async () => {
  expect((await schema('pair')).text).toBe(schemaText('pair'));
  expect(JSON.parse((await schema('snippets')).text)).toHaveProperty('laid');
});

test('asks which one', async () => {
  await expect(schema()).rejects.toThrow('which one? pair, birds, room, species or snippets');
  await expect(schema('birdz')).rejects.toThrow('no schema `birdz`; did you mean birds?');
  await expect(schema('pair', { write: true })).rejects.toThrow('leave the kind out');
});

test('--write puts all of them where new journals look for them', async () => {
  const { text } = await schema(undefined, { write: true });
  expect(text).toBe(
    ['pair', 'birds', 'room', 'species'].map((kind) => `.nestlog/${kind}.schema.json\n`).join(''),
  );
  const room = roomFolder({});
  expect(existsSync(join(room, '.nestlog'))).toBe(false);
  writeSchemas(room);
  writeSchemas(room);
  expect(readFileSync(join(room, '.nestlog/birds.schema.json'), 'utf8')).toBe(schemaText('birds'));
});
