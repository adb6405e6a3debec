import { appendFileSync, chmodSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import * as record from '../../src/commands/record.ts';
import * as undo from '../../src/commands/undo.ts';
import { keeper } from './keeper.ts';

const JOURNAL = `
  # mine
  pair: LW-1
  log:
    - {date: 2026-05-18, laid: 1}   # first
`;
const PATH = 'pairs/LW-1.yaml';
const NOTHING = 'nestlog: there is no entry to take back: `record` wrote none here since the last undo\n';

async function recorded() {
  const room = keeper({ 'LW-1': JOURNAL, 'LW-2': JOURNAL.replace('LW-1', 'LW-2') });
  const before = room.read(PATH);
  await room.type(record, { words: ['LW-1', 'checked', 'note=all well'] });
  return { ...room, before, after: room.read(PATH) };
}

test('the last entry is taken back, byte for byte, and once', async () => {
  const { type, read, before, after } = await recorded();
  expect(after).not.toBe(before);
  expect(await type(undo)).toEqual({
    out: 'Taken back; pairs/LW-1.yaml is as it was before:\n  - {date: 2026-06-01, checked, note: "all well"}\n',
    err: '',
    exit: 0,
  });
  expect(read(PATH)).toBe(before);
  expect(await type(undo)).toEqual({ out: '', err: NOTHING, exit: 1 });
});

test('a dry run shows it and leaves it', async () => {
  const { type, read, after } = await recorded();
  expect((await type(undo, { options: { dryRun: true } })).out).toMatch(
    /^Would be taken back from pairs\/LW-1\.yaml:\n/,
  );
  expect(read(PATH)).toBe(after);
});

test('of several the last is meant', async () => {
  const { type, read, after } = await recorded();
  await type(record, { words: ['LW-2', 'checked'] });
  await type(undo);
  expect(read(PATH)).toBe(after);
  expect(read('pairs/LW-2.yaml')).not.toContain('checked');
});

test('a journal that was changed since is left alone, and the entry is shown', async () => {
  const { type, read, folder, after } = await recorded();
  appendFileSync(join(folder, PATH), '# mine\n');
  const { err, exit } = await type(undo);
  expect(exit).toBe(1);
  expect(err).toBe(
    'nestlog: pairs/LW-1.yaml was changed since, so nothing was taken back; the entry was:\n  - {date: 2026-06-01, checked, note: "all well"}\n',
  );
  expect(read(PATH)).toBe(`${after}# mine\n`);
});

test('a journal that is gone, or may not be written', async () => {
  const one = await recorded();
  chmodSync(join(one.folder, PATH), 0o444);
  expect((await one.type(undo)).err).toContain('pairs/LW-1.yaml is whole, as it was');
  rmSync(join(one.folder, PATH));
  expect((await one.type(undo)).err).toContain('cannot be read');
});

test('another room has entries of its own', async () => {
  await recorded();
  const { type } = keeper({ 'LW-1': JOURNAL });
  expect(await type(undo)).toEqual({ out: '', err: NOTHING, exit: 1 });
});

test('what undo cannot remember is written all the same, and told', async () => {
  const { type, folder, read } = keeper({ 'LW-1': JOURNAL });
  const state = join(folder, 'nestlog.yaml');
  const { err, exit } = await type(record, { words: ['LW-1', 'checked'], state });
  expect(exit).toBe(0);
  expect(err).toContain('undo will not know of it');
  expect(read(PATH)).toContain('checked');
});
