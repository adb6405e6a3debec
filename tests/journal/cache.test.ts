import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeEach, describe, expect, test } from 'vitest';
import { openCache } from '../../src/journal/cache.ts';
import { loadRoom } from '../../src/journal/load.ts';
import { readFile, readRoom, readSource, type SourceText } from '../../src/journal/record.ts';
import { day } from '../rooms.ts';

const folder = mkdtempSync(join(tmpdir(), 'nestlog-cache-'));
afterAll(() => rmSync(folder, { recursive: true }));

const file = join(folder, 'deep', 'room.cache');
beforeEach(() => rmSync(join(folder, 'deep'), { recursive: true, force: true }));

/** A reader that counts how often it is asked to read. */
function counting() {
  const paths: string[] = [];
  return {
    paths,
    read: ({ path, text }: SourceText) => {
      paths.push(path);
      return readFile(path, text);
    },
  };
}

const journal = 'pair: LW-1\nlog:\n  - {date: 2026-03-01, laid: 1}\n';

/** One run of the program: these files are read, and what was read is kept. */
function run(files: Record<string, string>, build = '1') {
  const reader = counting();
  const cache = openCache(file, build, reader.read);
  const readings = Object.entries(files).map(([path, text]) => cache.read({ path, text }));
  cache.save();
  return { readings, read: reader.paths };
}

const samples = [
  'journals-example',
  'tests/findings/unreadable-entry',
  'tests/findings/not-utf8',
  'tests/findings/profile-reversed',
];

test.each(samples)('a room read from the cache is the room read anew: %s', (path) => {
  const files = loadRoom(fileURLToPath(new URL(`../../${path}`, import.meta.url)));
  const clock = { day: day('2026-05-17'), today: day('2026-11-25') };
  const fresh = readRoom(files, clock);
  for (const _ of ['first run', 'second run']) {
    const cache = openCache(file, '1', readSource);
    expect(readRoom(files, clock, cache.read)).toEqual(fresh);
    cache.save();
  }
});

describe('what is read', () => {
  test('is everything at first, and nothing when nothing has changed', () => {
    expect(run({ 'pairs/a.yaml': journal }).read).toEqual(['pairs/a.yaml']);
    expect(run({ 'pairs/a.yaml': journal }).read).toEqual([]);
  });

  test('is the one journal that has changed', () => {
    run({ 'pairs/a.yaml': journal, 'pairs/b.yaml': journal });
    expect(run({ 'pairs/a.yaml': journal, 'pairs/b.yaml': `${journal}# more\n` }).read).toEqual([
      'pairs/b.yaml',
    ]);
  });

  test('is a journal under another name, since its findings carry the name', () => {
    run({ 'pairs/a.yaml': journal });
    const { read, readings } = run({ 'pairs/c.yaml': journal });
    expect(read).toEqual(['pairs/c.yaml']);
    expect(readings).toEqual([readFile('pairs/c.yaml', journal)]);
  });

  test('is a journal that is there again: of one that is gone nothing is kept', () => {
    run({ 'pairs/a.yaml': journal, 'pairs/b.yaml': journal });
    run({ 'pairs/a.yaml': journal });
    expect(run({ 'pairs/a.yaml': journal, 'pairs/b.yaml': journal }).read).toEqual(['pairs/b.yaml']);
  });

  test('is everything after an update of the program', () => {
    run({ 'pairs/a.yaml': journal }, '1');
    expect(run({ 'pairs/a.yaml': journal }, '2').read).toEqual(['pairs/a.yaml']);
  });
});

describe('a cache that is not as it was written is not used, and is no error', () => {
  const damages: Record<string, (text: string) => string | Buffer> = {
    'cut off': (text) => text.slice(0, text.length / 2),
    empty: () => '',
    'one letter changed': (text) => text.replace('LW-1', 'LW-2'),
    'not ours': () => '{"files": {}}',
    binary: () => Buffer.from([0, 255, 254, 10, 0]),
  };

  test.each(Object.keys(damages))('%s', (kind) => {
    run({ 'pairs/a.yaml': journal });
    writeFileSync(file, damages[kind]?.(readFileSync(file, 'utf8')) ?? '');
    const { read, readings } = run({ 'pairs/a.yaml': journal });
    expect(read).toEqual(['pairs/a.yaml']);
    expect(readings).toEqual([readFile('pairs/a.yaml', journal)]);
  });

  test('a folder in its place', () => {
    mkdirSync(file, { recursive: true });
    expect(run({ 'pairs/a.yaml': journal }).readings).toEqual([readFile('pairs/a.yaml', journal)]);
  });
});

test('names of files that mean something to JavaScript are only names', () => {
  const files = Object.fromEntries(['__proto__', 'constructor'].map((name) => [name, journal]));
  run(files);
  const { read, readings } = run(files);
  expect(read).toEqual([]);
  expect(readings).toEqual([readFile('__proto__', journal), readFile('constructor', journal)]);
});

test('a room in several parts is read from them, and only the part of a changed journal is written', () => {
  const parted = (files: Record<string, string>) => {
    const reader = counting();
    const cache = openCache(file, '1', reader.read, 16);
    const readings = Object.entries(files).map(([path, text]) => cache.read({ path, text }));
    cache.save();
    return { readings, read: reader.paths };
  };
  const files = Object.fromEntries(Array.from({ length: 40 }, (_, i) => [`pairs/${i}.yaml`, journal]));
  const { readings } = parted(files);
  const written = () =>
    readdirSync(join(folder, 'deep')).map((name) => statSync(join(folder, 'deep', name)).ino);
  const before = written();
  expect(before.length).toBeGreaterThan(8);
  expect(before.length).toBeLessThanOrEqual(16);
  expect(parted(files)).toEqual({ readings, read: [] });
  expect(written()).toEqual(before);
  expect(parted({ ...files, 'pairs/7.yaml': `${journal}# more\n` }).read).toEqual(['pairs/7.yaml']);
  expect(written().filter((inode, i) => inode !== before[i])).toHaveLength(1);
});
