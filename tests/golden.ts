import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { expect, type RunnerTask, type RunnerTestFile } from 'vitest';

/** Pages that a test asked for. */
const asked = new Set<string>();

/** Compares a page with the one kept in the test's own folder: `golden/pair` beside `pair.test.ts`. */
export function expectGolden(test: string, name: string, text: string): void {
  const page = new URL(name, folderOf(test));
  asked.add(page.href);
  expectKept(page, text);
}

/** Compares a text with the one kept in a file; `UPDATE_GOLDEN=1` writes the file instead. */
export function expectKept(url: URL, text: string): void {
  if (process.env.UPDATE_GOLDEN) {
    mkdirSync(new URL('.', url), { recursive: true });
    writeFileSync(url, text);
  }
  expect(text).toBe(readFileSync(url, 'utf8'));
}

/**
 * After all tests of a file: a page kept for it that none of them asked for may say what nobody prints any more. Where some
 * test did not run, or failed, that is not known.
 */
export function expectAllAsked({ filepath, tasks }: Readonly<RunnerTestFile>): void {
  const folder = folderOf(pathToFileURL(filepath).href);
  if (!existsSync(folder) || !tasks.every(passed)) return;
  const left = readdirSync(folder).filter((name) => !asked.has(new URL(name, folder).href));
  expect(left, `pages in ${fileURLToPath(folder)} that no test asks for: remove them`).toEqual([]);
}

function passed(task: RunnerTask): boolean {
  return task.type === 'suite' ? task.tasks.every(passed) : task.result?.state === 'pass';
}

function folderOf(test: string): URL {
  return new URL(`golden/${basename(test, '.test.ts')}/`, test);
}
