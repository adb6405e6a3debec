import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { created } from '../../src/commands/create.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'nestlog-create-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function create(names: string[], force = false) {
  const said: string[] = [];
  const stderr = { write: (line: string) => void said.push(line), color: false, width: 80 };
  const files = names.map((path) => ({ path, text: `${names.length}` }));
  const place = { folder, named: (path: string) => `tables/${path}`, another: 'folder' };
  return { done: created({ stderr, options: { force } }, files, place), said: said.join('') };
}

test('files are written, and nothing needs to be said', () => {
  expect(create(['a.csv', 'b.csv'])).toEqual({ done: true, said: '' });
  expect(readdirSync(folder)).toEqual(['a.csv', 'b.csv']);
});

test('where one is there by now, none is written, and the keeper reads how to go on', () => {
  create(['b.csv']);
  expect(create(['a.csv', 'b.csv'])).toEqual({
    done: false,
    said: 'nestlog: nothing was written: tables/b.csv: a file of this name is there by now; --force replaces it, another folder keeps both\n',
  });
  expect(readdirSync(folder)).toEqual(['b.csv']);
  expect(create(['a.csv', 'b.csv'], true).done).toBe(true);
  expect(readFileSync(join(folder, 'b.csv'), 'utf8')).toBe('2');
});
