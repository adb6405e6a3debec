import { mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';
import type { EntryPlan } from '../../src/write/plan.ts';
import { forget, keepMemory, type Memory, memoryFile, planUndo, readMemory } from '../../src/write/undo.ts';
import { planned } from './planned.ts';
import { workshop } from './workshop.ts';

const { scratch } = workshop();

const TEXT = '\ufeffpair: LW-1\r\nlog:\r\n  - {date: 2026-03-01, paired}';

function kept(): { file: string; plan: EntryPlan; memory: Memory } {
  const file = memoryFile(scratch(), '/room');
  const plan = planned(TEXT, ['laid=1', 'note=雀']) as EntryPlan;
  expect(keepMemory(file, '/room', plan)).toBeNull();
  return { file, plan, memory: readMemory(file) as Memory };
}

test('what was written is kept for its room, for the keeper alone', () => {
  const { file, memory } = kept();
  expect(memory).toMatchObject({ room: '/room', path: 'pairs/LW-1.yaml' });
  expect(statSync(file).mode & 0o777).toBe(0o600);
  expect(memoryFile('/state', '/room')).not.toBe(memoryFile('/state', '/other'));
});

test('taken back, the file is what it was, byte for byte', () => {
  const { plan, memory } = kept();
  expect(planUndo(memory, plan.after)).toEqual({ before: plan.after, after: TEXT });
});

test('a file that was changed since is left alone, and so is one without the entry', () => {
  const { plan, memory } = kept();
  expect(planUndo(memory, `${plan.after}\n`)).toEqual({ refused: 'changed' });
  expect(planUndo(memory, TEXT)).toEqual({ refused: 'changed' });
  expect(planUndo({ ...memory, at: memory.at + 1 }, plan.after)).toEqual({ refused: 'changed' });
});

test('it is forgotten once', () => {
  const { file } = kept();
  forget(file);
  forget(file);
  expect(readMemory(file)).toBeNull();
});

test('where it cannot be taken away nothing goes wrong: the file has changed since, so that it is taken back once', () => {
  const { file, plan, memory } = kept();
  // A folder stands for a file that may not be removed.
  expect(() => forget(dirname(file))).not.toThrow();
  expect(planUndo(memory, plan.before)).toEqual({ refused: 'changed' });
});

test('what cannot be understood is as if nothing were kept', () => {
  const { file } = kept();
  const good = readFileSync(file, 'utf8');
  for (const text of ['', '{', 'null', good.replace('"nestlog":1', '"nestlog":2')]) {
    writeFileSync(file, text);
    expect(readMemory(file)).toBeNull();
  }
});

test('where it cannot be kept the reason is told', () => {
  const folder = scratch();
  writeFileSync(join(folder, 'nestlog'), 'a file');
  const { plan } = kept();
  expect(keepMemory(memoryFile(folder, '/room'), '/room', plan)).toBe(
    'something on the way to it is no folder',
  );
  const other = memoryFile(scratch(), '/room');
  mkdirSync(other, { recursive: true });
  expect(keepMemory(other, '/room', plan)).toBe('it is a folder');
});
