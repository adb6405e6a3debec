import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { definition, run } from '../../src/commands/export.ts';
import { UsageError } from '../../src/commands/usage-error.ts';
import { understandRoom } from '../../src/room/fold.ts';
import { planImport } from '../../src/write/import/plan.ts';
import { FAMILY_DAY, family } from '../report/family.ts';
import { day } from '../rooms.ts';
import { runCommand } from './run.ts';

const said: string[] = [];
const stderr = { write: (text: string) => void said.push(text), color: false, width: 80 };
beforeEach(() => void said.splice(0));

const birds = async (options: Record<string, unknown> = {}, json = false, files = family) =>
  (await runCommand({ run }, files, { on: FAMILY_DAY, arguments: ['birds'], options, json, stderr })).text;

describe('nestlog export birds', () => {
  it('is CSV where nothing else is asked for', async () => {
    const [head, first, ...rest] = (await birds()).split('\r\n');
    expect(head).toMatch(/^id,ring,species,sex,hatched,/);
    expect(first).toMatch(/^SF-2\/1\/c3,,star finch,,2024-02-28,/);
    expect(rest).toHaveLength(15);
  });

  it('says the same in all its forms', async () => {
    const { nestlog, table, rows } = JSON.parse(await birds({ format: 'json' }));
    expect([nestlog, table]).toEqual([1, 'birds']);
    expect(rows).toHaveLength(15);
    expect(
      (await birds({ format: 'ndjson' }))
        .trimEnd()
        .split('\n')
        .map((line) => JSON.parse(line)),
    ).toEqual(rows);
    expect(await birds({}, true)).toBe(await birds({ format: 'json' }));
  });
});

it('what cannot be read is told beside the table, never in it', async () => {
  const doubtful = 'pair: SF-4\nspecies: star finch\nlog:\n  - {date: 2026-05-01, laid: many}\n';
  expect(await birds({}, false, { ...family, 'SF-4': doubtful })).not.toContain('error');
  expect(said.join('')).toMatch(/^nestlog: 1 error in the journals: /);
});

describe('nestlog export events', () => {
  it('has what was observed, with whom it turned out to mean', async () => {
    const { text } = await runCommand({ run }, family, {
      on: FAMILY_DAY,
      arguments: ['events'],
      json: true,
      stderr,
    });
    const { table, rows } = JSON.parse(text);
    expect(table).toBe('events');
    expect(rows.map(({ key }: { key: string }) => key)).toContain('hatched');
  });
});

describe('nestlog export --all', () => {
  let folder: string;
  beforeEach(() => {
    folder = join(mkdtempSync(join(tmpdir(), 'nestlog-export-')), 'tables');
  });
  afterEach(() => rmSync(join(folder, '..'), { recursive: true, force: true }));

  const all = (options: Record<string, unknown> = {}, more: Partial<Parameters<typeof runCommand>[2]> = {}) =>
    runCommand({ run }, family, { on: FAMILY_DAY, options: { all: folder, ...options }, stderr, ...more });

  it('writes a CSV for each table, and what describes them', async () => {
    const { text, exit } = await all();
    expect(exit).toBe(0);
    expect(text).toMatch(/^written into .*: pairs\.csv \(\d+\), birds\.csv \(15\), .*datapackage\.json\n$/);
    const { resources } = JSON.parse(readFileSync(join(folder, 'datapackage.json'), 'utf8'));
    expect(readdirSync(folder).sort()).toEqual(
      ['datapackage.json', ...resources.map(({ path }: { path: string }) => path)].sort(),
    );
    expect(readFileSync(join(folder, 'birds.csv'), 'utf8')).toBe(await birds());
  });

  it('replaces nothing unasked, and writes none of them where one is there', async () => {
    mkdirSync(folder);
    writeFileSync(join(folder, 'rates.csv'), 'mine');
    const refused = await all();
    expect(refused).toMatchObject({ exit: 1, text: '' });
    expect(said.join('')).toContain('rates.csv: a file of this name is there by now; --force replaces it');
    expect(readdirSync(folder)).toEqual(['rates.csv']);
    expect((await all({ force: true })).exit).toBe(0);
    expect(readFileSync(join(folder, 'rates.csv'), 'utf8')).toMatch(/^season,/);
  });

  it('takes no table, no format and no JSON', async () => {
    for (const more of [{ arguments: ['birds'] }, { json: true }]) {
      await expect(async () => all({}, more)).rejects.toThrow(UsageError);
    }
    await expect(async () => all({ format: 'csv' })).rejects.toThrow(UsageError);
  });
});

it('what is exported can be imported again, texts to the letter', async () => {
  const note = '=HYPERLINK("x"), \'quoted\' 🐤';
  const files = {
    'LW-1': `pair: LW-1\nspecies: lavender waxbill\nlog:\n  - {date: 2026-03-01, heard: "-2 °C outside", note: ${JSON.stringify(note)}}\n`,
  };
  const { text } = await runCommand({ run }, files, { arguments: ['events'] });
  const mapping =
    'rows: events\npair: <pair>\nspecies: <species>\nlog:\n  - {date: <date>, heard: <what>, note: <note>}\n';
  const on = day('2026-06-01');
  const target = { existing: [], into: '', clock: { day: on, today: on }, understand: understandRoom };
  const plan = planImport({ name: 'events.csv', text }, { name: 'map.yaml', text: mapping }, target);
  expect(plan.problems).toEqual([]);
  expect(plan.journals[0]?.text).toContain(`heard: "-2 °C outside", note: ${JSON.stringify(note)}}`);
});

it('without a table, says which there are', async () => {
  await expect(async () => runCommand({ run }, {}, {})).rejects.toThrow(
    'name a table; there is pairs, birds, clutches, eggs, chicks, events, rates (--all FOLDER for all of them)',
  );
});

it('a table or form that there is not is wrong usage', async () => {
  await expect(async () => runCommand({ run }, {}, { arguments: ['toString'] })).rejects.toThrow(UsageError);
  const format = definition.options?.find(({ flags }) => flags.startsWith('--format'))?.parse;
  expect(() => format?.('xml')).toThrow('--format takes csv, json, ndjson, not `xml`');
  for (const [said, table] of [
    ['Eggs', 'eggs'],
    ['clutchs', 'clutches'],
    ['chick', 'chicks'],
  ])
    await expect(async () => runCommand({ run }, {}, { arguments: [said as string] })).rejects.toThrow(
      `not \`${said}\`; did you mean \`${table}\`?`,
    );
  expect(() => format?.('CSV')).toThrow('did you mean `csv`?');
});
