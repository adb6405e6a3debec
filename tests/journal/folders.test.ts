import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { isFolder, makeFolders } from '../../src/journal/folders.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'nestlog-folders-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

it('a folder is made with all above it, and again without a word', () => {
  const deep = join(folder, 'a/b/c');
  expect([makeFolders(deep), makeFolders(deep)]).toEqual([null, null]);
  expect(isFolder(deep)).toBe(true);
  expect(isFolder(join(folder, 'none'))).toBe(false);
});

it('a file of its name, or on the way to it, is left as it is', () => {
  const file = join(folder, 'file');
  writeFileSync(file, '');
  expect(isFolder(file)).toBe(false);
  expect(makeFolders(file)).toMatchObject({ code: 'ENOTDIR' });
  expect(makeFolders(join(file, 'below'))).toMatchObject({ code: 'ENOTDIR' });
});

it.runIf(existsSync('/proc/self'))('where the system takes none, that is said and not tried for ever', () => {
  expect(makeFolders('/proc/nestlog/rooms')).toMatchObject({ code: 'ENOENT' });
});
