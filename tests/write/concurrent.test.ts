/**
 * Two processes that write to one journal, and one that is killed while it does. `NESTLOG_APPENDS=500` makes the first
 * test the whole thousand.
 */
import { spawn } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { readFile } from '../../src/journal/record.ts';
import { APPENDER, workshop } from './workshop.ts';

const { bundled, scratch } = workshop();

const EACH = Number(process.env.NESTLOG_APPENDS ?? 60);
const KILLS = 12;
const HEAD = 'pair: LW\nlog:\n';

let program = '';
beforeAll(async () => {
  program = await bundled(APPENDER);
});

const JOURNALS = ['pairs/LW-1.yaml', 'pairs/LW-2.yaml', 'pairs/LW-3.yaml', 'pairs/LW-4.yaml'];

function room(): string {
  const folder = scratch();
  mkdirSync(join(folder, 'pairs'));
  for (const journal of JOURNALS) writeFileSync(join(folder, journal), HEAD);
  return folder;
}

/** Notes of all entries; the journals must read without a finding. */
function notes(folder: string): string[] {
  return JOURNALS.flatMap((journal) => {
    const { says, findings } = readFile(journal, readFileSync(join(folder, journal), 'utf8'));
    expect(findings).toEqual([]);
    return [...(says.journal?.entries ?? [])].map(({ note }) => note?.text ?? '');
  });
}

/**
 * Nothing is left beside the journals: no lock, no half of a file. Killed in the instant between a file's creation and
 * its being remembered, a writer leaves that file empty; no reader takes it for a journal.
 */
function expectTidy(folder: string) {
  expect(
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((path) => !isEmptyLeftover(join(folder, path)))
      .sort(),
  ).toEqual(['pairs', ...JOURNALS]);
}

function isEmptyLeftover(path: string): boolean {
  return /\.yaml\.\d+$/.test(path) && statSync(path).size === 0;
}

/** Runs the appender; when it has written so many entries it is killed as `kill -9` does. */
function append(folder: string, name: string, count: number, killedAfter?: number): Promise<number | null> {
  const child = spawn(process.execPath, [program, folder, name, String(count), ...JOURNALS]);
  let said = 0;
  child.stdout.on('data', (data: Buffer) => {
    said += data.toString().split('\n').length - 1;
    if (killedAfter !== undefined && said >= killedAfter)
      setTimeout(() => child.kill('SIGKILL'), Math.random() * 8);
  });
  return new Promise((resolve) => child.on('close', resolve));
}

test('all entries of two processes at once are there, and none is torn', { timeout: 120_000 }, async () => {
  const folder = room();
  expect(await Promise.all([append(folder, 'a', EACH), append(folder, 'b', EACH)])).toEqual([0, 0]);
  const expected = ['a', 'b'].flatMap((name) => Array.from({ length: EACH }, (_, i) => `${name} ${i + 1}`));
  expect(notes(folder).sort()).toEqual(expected.sort());
  expectTidy(folder);
});

test('killed at any moment, all is whole, and the next one writes and tidies up', async () => {
  const folder = room();
  let done: string[] = [];
  for (let i = 0; i < KILLS; i++) {
    await append(folder, `k${i}`, 10_000, 1 + (i % 3));
    const now = notes(folder);
    expect(now).toEqual(expect.arrayContaining(done));
    done = now;
  }
  expect(await append(folder, 'last', 1)).toBe(0);
  expect(notes(folder).sort()).toEqual([...done, 'last 1'].sort());
  expectTidy(folder);
});
