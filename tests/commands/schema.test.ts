import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { run } from '../../src/commands/schema.ts';
import { schemaText } from '../../src/report/schema/index.ts';
import { keeper } from './keeper.ts';
import { runCommand } from './run.ts';

const schema = (kind?: string, options = {}) =>
  runCommand({ run }, {}, { arguments: kind === undefined ? [] : [kind], options });

test('prints the schema of one kind of file, or the snippets', async () => {
  expect((await schema('pair')).text).toBe(schemaText('pair'));
  expect(JSON.parse((await schema('snippets')).text)).toHaveProperty('laid');
});

test('asks which one', async () => {
  await expect(schema()).rejects.toThrow('which one? pair, birds, room, species or snippets');
  await expect(schema('birdz')).rejects.toThrow('species, snippets, not `birdz`; did you mean `birds`?');
  await expect(schema('pair', { write: true })).rejects.toThrow('leave the kind out');
});

test('--write puts all of them where new journals look for them, in place of older ones', async () => {
  const { type, read, folder } = keeper({});
  expect(existsSync(join(folder, '.nestlog'))).toBe(false);
  const files = ['pair', 'birds', 'room', 'species'].map((kind) => `.nestlog/${kind}.schema.json\n`);
  for (const _ of ['new', 'again']) {
    expect(await type({ run }, { options: { write: true } })).toEqual({
      out: files.join(''),
      err: '',
      exit: 0,
    });
  }
  expect(read('.nestlog/birds.schema.json')).toBe(schemaText('birds'));
});

test('where they cannot lie, nothing is written and the reason is said', async () => {
  const { type, folder } = keeper({});
  writeFileSync(join(folder, '.nestlog'), '');
  expect(await type({ run }, { options: { write: true } })).toEqual({
    out: '',
    err: 'nestlog: nothing was written: .nestlog/pair.schema.json: something on the way to it is no folder\n',
    exit: 1,
  });
});
