import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { root } from '../../bin/build/settings.mjs';
import { coveredBy, tableTested, unasked, withoutTest } from './mirror.mjs';

const exceptions = {
  folders: { 'src/eggs': 'tests/eggs.test.ts' },
  files: { 'src/a.ts': 'tests/b.test.ts' },
};
const missing = (path: string, tests: string[], text = 'export const x = 1;') =>
  withoutTest([{ path, text }], new Set(tests), exceptions).map(({ what }) => what);

it('wants a test in the same place', () => {
  expect(missing('src/room/fold.ts', ['tests/room/fold.test.ts'])).toEqual([]);
  expect(missing('src/room/fold.ts', ['tests/fold.test.ts'])).toEqual([
    'has no test: tests/room/fold.test.ts',
  ]);
});

it('wants none for types', () => {
  expect(
    missing('src/room/model.ts', [], "import type { A } from './a.ts';\nexport interface B extends A {}"),
  ).toEqual([]);
});

it('takes one test for a folder of same-shaped files, and the named exceptions', () => {
  expect(missing('src/eggs/clear.ts', ['tests/eggs.test.ts'])).toEqual([]);
  expect(missing('src/eggs/clear.ts', [])).toEqual(['has no test: tests/eggs.test.ts']);
  expect(missing('src/a.ts', ['tests/b.test.ts'])).toEqual([]);
});

it('has no exception for what is no longer there', () => {
  const named = [...Object.keys(tableTested), ...Object.keys(coveredBy)];
  expect(named.filter((path) => !existsSync(join(root, path)))).toEqual([]);
});

it('has no exception for what has a test of its own', () => {
  const hasOwn = (path: string) =>
    existsSync(join(root, path.replace(/^src/, 'tests').replace(/\.tsx?$/, '.test.ts')));
  expect(Object.keys(coveredBy).filter(hasOwn)).toEqual([]);
  const sources = (folder: string) =>
    readdirSync(join(root, folder))
      .filter((name) => /\.tsx?$/.test(name))
      .map((name) => `${folder}/${name}`);
  expect(Object.keys(tableTested).filter((folder) => sources(folder).every(hasOwn))).toEqual([]);
});

it('wants a test beside each page that is kept for one', () => {
  const tests = new Set(['tests/a/pair.test.ts']);
  const told = (path: string) => unasked([path], tests).map(({ what }) => what);
  expect(told('tests/a/golden/pair/80.txt')).toEqual([]);
  expect(told('tests/a/golden/bird/80.txt')).toEqual(['is asked for by no test: tests/a/bird.test.ts']);
  expect(told('tests/a/golden/pair-80.txt')).toEqual([
    'is asked for by no test: tests/a/pair-80.txt.test.ts',
  ]);
});
