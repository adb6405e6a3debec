import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, beforeEach, expect, it, type RunnerTask, type RunnerTestFile } from 'vitest';
import { expectAllAsked, expectGolden } from './golden.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'nestlog-golden-'));
  mkdirSync(join(folder, 'golden/pair'), { recursive: true });
  for (const name of ['80.txt', '120.txt']) writeFileSync(join(folder, 'golden/pair', name), 'LW-1\n');
});
afterEach(() => rmSync(folder, { recursive: true }));

const ends = (...states: string[]) => {
  const tests = states.map((state) => ({ type: 'test', result: { state } }) as RunnerTask);
  const tasks = [{ type: 'suite', tasks: tests } as RunnerTask];
  return () => expectAllAsked({ filepath: join(folder, 'pair.test.ts'), tasks } as RunnerTestFile);
};
const ask = (name: string) => expectGolden(pathToFileURL(join(folder, 'pair.test.ts')).href, name, 'LW-1\n');

it('a page that no test of its file asked for is told, once all of them have passed', () => {
  ask('80.txt');
  expect(ends('pass', 'pass')).toThrow(/golden.pair.*120\.txt/s);
  expect(ends('pass', 'fail')).not.toThrow();
  expect(ends('pass', 'skip')).not.toThrow();
  ask('120.txt');
  expect(ends('pass')).not.toThrow();
});

it('a file without pages has none that are left', () => {
  rmSync(join(folder, 'golden'), { recursive: true });
  expect(ends('pass')).not.toThrow();
});
