/**
 * The gallery: a folder for each code of a finding, with a tiny room that provokes it and, in `expected.txt`, what
 * `nestlog check` says of it at 80 columns. `UPDATE_GOLDEN=1` writes those files.
 *
 * A folder may hold `clock`, the day to stand on and, behind a blank, the day on the wall (both 2026-06-01 without
 * it), and `make.mjs`, whose default export is given the path of a copy of the room to add what git cannot keep.
 */
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, test } from 'vitest';
import { run } from '../../src/commands/check.ts';
import { codes, type FindingCode } from '../../src/findings/codes.ts';
import { widthOf } from '../../src/report/terminal/width.ts';
import { expectKept } from '../golden.ts';
import { FORBIDDEN } from '../report/hostile.ts';
import { day } from '../rooms.ts';

const gallery = fileURLToPath(new URL('.', import.meta.url));
const rooms = readdirSync(gallery, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name);
const copies = mkdtempSync(join(tmpdir(), 'nestlog-gallery-'));

afterAll(() => rmSync(copies, { recursive: true }));

/** The folder of a sample's room: its own, or a copy where something has to be made first. */
async function roomOf(code: string): Promise<string> {
  const folder = join(gallery, code);
  if (!existsSync(join(folder, 'make.mjs'))) return folder;
  const copy = join(copies, code);
  if (!existsSync(copy)) {
    cpSync(folder, copy, { recursive: true, verbatimSymlinks: true });
    const { default: make } = await import(join(folder, 'make.mjs'));
    make(copy);
  }
  return copy;
}

async function check(code: string, options: { json: boolean }): Promise<{ text: string; exit: number }> {
  const clock = join(gallery, code, 'clock');
  const [standing = '', wall = standing] = existsSync(clock)
    ? readFileSync(clock, 'utf8').trim().split(' ')
    : ['2026-06-01'];
  const written: string[] = [];
  const output = { write: (text: string) => void written.push(text), color: false, width: 80 };
  const exit = run({
    day: day(standing),
    today: day(wall),
    journals: await roomOf(code),
    state: '/nowhere',
    json: options.json,
    arguments: [],
    options: {},
    stdout: output,
    stderr: output,
  });
  return { text: written.join(''), exit };
}

test('every code has its sample', () => {
  expect(Object.keys(codes).filter((code) => !rooms.includes(code))).toEqual([]);
});

test('every sample has its code', () => {
  expect(rooms.filter((room) => !(room in codes))).toEqual([]);
});

describe.each(rooms.filter((room) => room in codes) as FindingCode[])('%s', (code) => {
  test('is provoked, and only errors make the exit code 1', async () => {
    const { text, exit } = await check(code, { json: true });
    const found: { code: FindingCode; level: string }[] = JSON.parse(text).findings;
    expect(found.map((finding) => finding.code)).toContain(code);
    expect(exit).toBe(found.some(({ level }) => level === 'error') ? 1 : 0);
  });

  test('is told as it was', async () => {
    const { text } = await check(code, { json: false });
    expectKept(new URL(`${code}/expected.txt`, import.meta.url), text);
  });

  test('is told in the one layout', async () => {
    const { text } = await check(code, { json: false });
    expect(text).not.toMatch(FORBIDDEN);
    const blocks = text.trimEnd().split('\n\n');
    expect(blocks.pop()).toMatch(/^\d+ (error|hint)s?( and \d+ hints?)? in \d+ files?\. /);
    for (const block of blocks) {
      const [head = '', ...rest] = block.split('\n');
      expect(head).toMatch(/^\S+:\d+:\d+: (error|hint): \S/);
      for (const line of rest) expect(line).toMatch(/^ /);
      const broken = rest.filter((line) => !/^ +(- |\w+:)/.test(line));
      for (const line of broken) expect(widthOf(line)).toBeLessThanOrEqual(80);
    }
  });
});
