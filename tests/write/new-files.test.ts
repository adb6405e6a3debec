import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { createFiles } from '../../src/write/new-files.ts';

let room: string;
beforeEach(() => {
  room = mkdtempSync(join(tmpdir(), 'nestlog-create-'));
});
afterEach(() => {
  rmSync(room, { recursive: true, force: true });
});

const everything = () =>
  readdirSync(room, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ name }) => name)
    .sort();

const files = [
  { path: 'pairs/old/A-1.yaml', text: 'pair: A-1\n' },
  { path: 'pairs/old/A-2.yaml', text: 'pair: A-2\n' },
];

test('files are begun, with the folders that they need, and nothing else is left', () => {
  expect(createFiles(room, files)).toBeNull();
  expect(readFileSync(join(room, 'pairs/old/A-2.yaml'), 'utf8')).toBe('pair: A-2\n');
  expect(everything()).toEqual(['A-1.yaml', 'A-2.yaml']);
});

test('a long file is written a part at a time; where one cannot be made, nothing is left', () => {
  const parts = function* (broken: boolean) {
    yield 'pair: ';
    if (broken) throw new RangeError('a mistake of the program');
    yield 'A-3\n';
  };
  const path = 'pairs/A-3.yaml';
  expect(() => createFiles(room, [...files, { path, parts: parts(true) }])).toThrow(
    'a mistake of the program',
  );
  expect(everything()).toEqual([]);
  expect(createFiles(room, [{ path, parts: parts(false) }])).toBeNull();
  expect(readFileSync(join(room, path), 'utf8')).toBe('pair: A-3\n');
});

test('a folder that is a link stays one', () => {
  mkdirSync(join(room, 'elsewhere'));
  symlinkSync(join(room, 'elsewhere'), join(room, 'pairs'));
  expect(createFiles(room, files)).toBeNull();
  expect(readdirSync(join(room, 'elsewhere/old'))).toEqual(['A-1.yaml', 'A-2.yaml']);
});

describe('where one cannot be begun, none is:', () => {
  test('a file of that name is there, and keeps every byte', () => {
    mkdirSync(join(room, 'pairs/old'), { recursive: true });
    writeFileSync(join(room, 'pairs/old/A-2.yaml'), 'mine\n');
    expect(createFiles(room, files)).toEqual({
      path: 'pairs/old/A-2.yaml',
      reason: 'a file of this name is there by now',
      code: 'EEXIST',
    });
    expect(everything()).toEqual(['A-2.yaml']);
    expect(readFileSync(join(room, 'pairs/old/A-2.yaml'), 'utf8')).toBe('mine\n');
  });

  test('a folder has that name, and is no file to be replaced', () => {
    mkdirSync(join(room, 'pairs/old/A-1.yaml'), { recursive: true });
    expect(createFiles(room, files)).toMatchObject({ code: 'EISDIR', reason: 'it is a folder' });
  });

  test('something on the way is no folder', () => {
    writeFileSync(join(room, 'pairs'), 'a file\n');
    expect(createFiles(room, files)?.reason).toMatch(/no folder|a file of this name/);
    expect(everything()).toEqual(['pairs']);
  });

  test.skipIf(process.getuid?.() === 0)('the folder can only be read', () => {
    mkdirSync(join(room, 'pairs'));
    chmodSync(join(room, 'pairs'), 0o555);
    expect(createFiles(room, files)?.reason).toBe('permission denied');
    chmodSync(join(room, 'pairs'), 0o755);
    expect(everything()).toEqual([]);
  });
});

describe('asked to, it replaces', () => {
  test('a file of that name, in one step, and begins the others', () => {
    mkdirSync(join(room, 'pairs/old'), { recursive: true });
    writeFileSync(join(room, 'pairs/old/A-2.yaml'), 'mine\n');
    expect(createFiles(room, files, 'replace')).toBeNull();
    expect(readFileSync(join(room, 'pairs/old/A-2.yaml'), 'utf8')).toBe('pair: A-2\n');
    expect(everything()).toEqual(['A-1.yaml', 'A-2.yaml']);
  });

  test('no folder', () => {
    mkdirSync(join(room, 'pairs/old/A-1.yaml'), { recursive: true });
    expect(createFiles(room, files, 'replace')).toEqual({
      path: 'pairs/old/A-1.yaml',
      reason: 'it is a folder',
      code: 'EISDIR',
    });
    expect(everything()).toEqual([]);
  });
});
