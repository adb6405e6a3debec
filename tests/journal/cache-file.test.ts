import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, test } from 'vitest';
import { hashOf, keep, kept } from '../../src/journal/cache-file.ts';

let folder: string;
let file: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'nestlog-kept-'));
  file = join(folder, 'deep', 'one.cache');
});
afterEach(() => rmSync(folder, { recursive: true }));

it('hashes text as the bytes that it is written in', () => {
  // FIPS 180-4, the example of "abc": ba7816bf 8f01cfea … f20015ad.
  expect(Buffer.from(hashOf('abc'), 'base64').toString('hex')).toBe(
    'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad',
  );
  expect(hashOf('Blässhuhn 🐣')).toBe(hashOf(Buffer.from('Blässhuhn 🐣')));
});

test.each(['', 'one line', 'several\n\nlines\n', 'ä 🐣 \u0000'])('what was kept comes back: %j', (text) => {
  keep(file, '1', text);
  expect(kept(file, '1')).toBe(text);
});

it('is for the keeper’s own eyes, and leaves nothing beside it', () => {
  keep(file, '1', 'secret');
  keep(file, '1', 'newer');
  expect(readdirSync(join(folder, 'deep'))).toEqual(['one.cache']);
  expect(statSync(file).mode & 0o077).toBe(0);
});

describe('nothing comes back', () => {
  it('where nothing was kept, and after an update of the program', () => {
    expect(kept(file, '1')).toBeNull();
    keep(file, '1', 'text');
    expect(kept(file, '2')).toBeNull();
  });

  const damages: Record<string, (bytes: Buffer) => Buffer | string> = {
    'cut off': (bytes) => bytes.subarray(0, bytes.length - 1),
    empty: () => '',
    'one letter changed': (bytes) => bytes.toString().replace('word', 'Word'),
    'another letter behind it': (bytes) => `${bytes}.`,
    'not ours': () => '{"words": 1}',
    binary: () => Buffer.from([0, 255, 254, 10, 0]),
  };
  test.each(Object.keys(damages))('of a file that is %s', (kind) => {
    keep(file, '1', 'a word');
    writeFileSync(file, damages[kind]?.(readFileSync(file)) ?? '');
    expect(kept(file, '1')).toBeNull();
  });

  it('of a folder in its place, into which nothing can be kept either', () => {
    mkdirSync(file, { recursive: true });
    keep(file, '1', 'text');
    expect(kept(file, '1')).toBeNull();
  });
});
