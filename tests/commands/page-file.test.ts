import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { writePage } from '../../src/commands/page-file.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'nestlog-page-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function write(text: string, force = false, name = join(folder, 'season.html')) {
  const said: string[] = [];
  const stream = { write: (line: string) => void said.push(line), color: false, width: 80 };
  const exit = writePage({ stdout: stream, stderr: stream, options: { force }, json: false }, name, text);
  return { exit, said: said.join('').replaceAll(folder, '.') };
}

test('a page is written, and where it is is said', () => {
  expect(write('one')).toEqual({ exit: 0, said: 'written: ./season.html\n' });
  expect(readdirSync(folder)).toEqual(['season.html']);
});

test('a file of that name stays, unless it is to be replaced', () => {
  write('one');
  expect(write('two')).toEqual({
    exit: 1,
    said: 'nestlog: nothing was written: ./season.html: a file of this name is there by now; --force replaces it, another name keeps both\n',
  });
  expect(readFileSync(join(folder, 'season.html'), 'utf8')).toBe('one');
  expect(write('two', true).exit).toBe(0);
  expect(readFileSync(join(folder, 'season.html'), 'utf8')).toBe('two');
});

test('a page under the name of another kind of file would not open', () => {
  expect(() => write('one', false, join(folder, 'season.pdf'))).toThrow(/a page is HTML.*season\.html"?$/);
  expect(readdirSync(folder)).toEqual([]);
  for (const name of ['season', 'season.HTM', 'season.2026'])
    expect(write('one', false, join(folder, name)).exit).toBe(0);
});

test('a folder is no place for a page’s text', () => {
  expect(write('one', true, folder)).toMatchObject({ exit: 1 });
  expect(readdirSync(folder)).toEqual([]);
});

test('data and a page at once are one too many', () => {
  const stream = { write: () => {}, color: false, width: 80 };
  const context = { stdout: stream, stderr: stream, options: {}, json: true };
  expect(() => writePage(context, join(folder, 'a.html'), 'one')).toThrow('leave one of them out');
  expect(readdirSync(folder)).toEqual([]);
});
