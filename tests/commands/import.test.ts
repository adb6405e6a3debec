import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, describe, expect, test } from 'vitest';
import type { Context } from '../../src/commands/context.ts';
import { definition, run } from '../../src/commands/import.ts';
import { day } from '../rooms.ts';
import { roomFolder } from './run.ts';

const outside = mkdtempSync(join(tmpdir(), 'nestlog-import-'));
afterAll(() => rmSync(outside, { recursive: true }));

const csv = join(outside, 'old.csv');
const map = join(outside, 'map.yaml');
let room: string;

beforeEach(() => {
  room = roomFolder({});
  writeFileSync(csv, 'Pair,Laid,Eggs\nLW-1,2024-03-04,4\nLW-2,2024-03-05,5\n');
  writeFileSync(
    map,
    'rows: clutches\npair: <Pair>\nspecies: lavender waxbill\nlog:\n  - {date: <Laid>, laid: <Eggs>}\n',
  );
});

function call(options: Record<string, unknown>, { json = false, file = csv, folder = room } = {}) {
  const out: string[] = [];
  const said: string[] = [];
  const stream = (lines: string[]) => ({
    write: (text: string) => void lines.push(text),
    color: false,
    width: 80,
  });
  const context = {
    day: day('2026-06-01'),
    today: day('2026-06-01'),
    journals: folder,
    json,
    arguments: [file],
    options,
    stdout: stream(out),
    stderr: stream(said),
  } as unknown as Context;
  const exit = run(context as never);
  return { exit, text: out.join(''), messages: said.join('') };
}

const inRoom = () => readdirSync(room, { recursive: true }).map(String).sort();

test('journals are written, and what was done is told', () => {
  const { exit, text } = call({ map });
  expect(exit).toBe(0);
  expect(text).toBe(`old.csv: 2 rows, 2 journals, 2 entries

pairs/LW-1.yaml:
  # yaml-language-server: $schema=../.nestlog/pair.schema.json
  # From old.csv, imported on 2026-06-01.
  pair: LW-1
  species: lavender waxbill
  log:
    - {date: 2024-03-04, clutch: 1, laid: 4}

All of it is written. \`nestlog check\` reads it once more.
`);
  expect(readFileSync(join(room, 'pairs/LW-2.yaml'), 'utf8')).toContain('laid: 5}\n');
});

test('--dry-run writes nothing', () => {
  expect(call({ map, dryRun: true }).text).toMatch(
    /Nothing is written yet: without --dry-run it will be\.\n$/,
  );
  expect(inRoom()).toEqual(['nestlog.yaml']);
});

test('a second import of the same table changes nothing', () => {
  call({ map });
  const before = readFileSync(join(room, 'pairs/LW-1.yaml'), 'utf8');
  const { exit, text } = call({ map });
  expect(exit).toBe(1);
  expect(text).toMatch(/^old\.csv row 2: error: LW-1 has a journal already, pairs\/LW-1\.yaml;/);
  expect(readFileSync(join(room, 'pairs/LW-1.yaml'), 'utf8')).toBe(before);
});

test('one row that is not understood stops all of them', () => {
  writeFileSync(csv, 'Pair,Laid,Eggs\nLW-1,2024-03-04,4\nLW-2,31.2.2024,5\n');
  const { exit, text } = call({ map });
  expect(exit).toBe(1);
  expect(text).toBe(`old.csv row 3, Laid: error: the calendar has no day \`31.2.2024\`
  fix: write it as YYYY-MM-DD

1 problem, so nothing is written.
`);
  expect(inRoom()).toEqual(['nestlog.yaml']);
});

test('--json tells the same to a program', () => {
  expect(JSON.parse(call({ map, dryRun: true }, { json: true }).text)).toEqual({
    nestlog: 1,
    table: 'old.csv',
    written: false,
    rows: 2,
    skipped: 0,
    dates: { order: null, because: null },
    unread: [],
    zeros: {},
    journals: [
      { pair: 'LW-1', path: 'pairs/LW-1.yaml', entries: 1, assumed: 0 },
      { pair: 'LW-2', path: 'pairs/LW-2.yaml', entries: 1, assumed: 0 },
    ],
    hints: [],
    problems: [],
  });
});

test('--guess prints a mapping, or what is wrong with the table', () => {
  expect(call({ guess: true }).text).toContain('  - {date: <Laid>, laid: <Eggs>}\n');
  writeFileSync(csv, 'Pair,Laid\n"LW-1,2\n');
  expect(call({ guess: true })).toMatchObject({
    exit: 1,
    text: expect.stringMatching(/^old\.csv row 2: error: a quote is opened and never closed/),
  });
});

describe('wrong usage', () => {
  test('no mapping, no room, no such file, no text', () => {
    expect(() => call({})).toThrow('name the mapping with --map; --guess prints one');
    expect(() => call({ map }, { folder: outside })).toThrow('No room here to import into');
    expect(() => call({ map }, { file: join(outside, 'none.csv') })).toThrow(
      /none\.csv cannot be read: there is no such file/,
    );
    expect(() => call({ map: outside })).toThrow(/cannot be read: it is a folder/);
    writeFileSync(csv, Buffer.from('\ufeffPair\n', 'utf16le'));
    expect(() => call({ map })).toThrow(/is no CSV: save the table as "CSV, UTF-8"/);
  });

  test('a table that cannot be reached says why in words, not by the code of the system', () => {
    expect(() => call({ map }, { file: join(csv, 'of-it.csv') })).toThrow(
      /of-it\.csv cannot be read: something on the way to it is no folder/,
    );
  });

  test('--into stays below pairs/', () => {
    const into = definition.options?.find(({ flags }) => flags.startsWith('--into'))?.parse;
    expect(into?.('old/2024/')).toBe('old/2024');
    for (const path of ['..', 'a/../..', '/etc', '', '.hidden', 'C:\\x'])
      expect(() => into?.(path)).toThrow('--into takes');
  });
});
