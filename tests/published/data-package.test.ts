/**
 * Data Package v1 (Frictionless Data, specs.frictionlessdata.io): the profile "Tabular Data Package" as the standard
 * publishes it, a JSON Schema of draft 4, carried over from the npm package datapackage 1.1.10 (MIT, Copyright (c) 2015
 * Open Knowledge), which itself brings an old network library.
 *
 * Then the tables in DuckDB, loaded with the types that the package declares.
 */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type DuckDBConnection, DuckDBInstance } from '@duckdb/node-api';
import Ajv from 'ajv-draft-04';
import addFormats from 'ajv-formats';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { root } from '../../bin/build/settings.mjs';
import { run as exportRun } from '../../src/commands/export.ts';
import { run as seasonRun } from '../../src/commands/season.ts';
import { readTable } from '../../src/write/import/table.ts';
import { roomFolder } from '../commands/run.ts';
import { day } from '../rooms.ts';
import { room as knownSeason, ON } from './known-season.ts';

const scratch = mkdtempSync(join(tmpdir(), 'nestlog-package-'));
afterAll(() => rmSync(scratch, { recursive: true, force: true }));

const published = readFileSync(join(root, 'tests/published/frictionless/tabular-data-package.json'), 'utf8');
/** Its words for people and its order of properties are no rules of JSON Schema. */
const isPackage = addFormats
  .default(new Ajv({ allErrors: true, strict: false, formats: { textarea: true } }))
  .compile(JSON.parse(published));

interface Resource {
  name: string;
  path: string;
  schema: {
    fields: { name: string; type: string; constraints?: { required?: boolean; enum?: string[] } }[];
    primaryKey?: string[];
    foreignKeys?: { fields: string; reference: { resource: string; fields: string } }[];
  };
}

const TYPES: Record<string, string> = {
  string: 'VARCHAR',
  integer: 'BIGINT',
  number: 'DOUBLE',
  date: 'DATE',
  time: 'TIME',
};

const rooms = {
  'the season that is worked out by hand': { journals: roomFolder(knownSeason), on: ON },
  'the example room': { journals: join(root, 'journals-example'), on: '2026-05-17' },
  'an empty room': { journals: roomFolder({}), on: '2026-05-17' },
  'a room whose names and notes are out to harm': {
    journals: roomFolder({
      'nestlog.yaml': 'room: "=the room\\u202E"\n',
      'birds.yaml': 'birds:\n  - {id: "@B1", species: star finch, sire: nobody listed, origin: "+49"}\n',
      wild: `pair: "-P1"\nspecies: star finch\ncock: "=A1"\nhousing: "\\t=1+1"\nlog:\n  - {date: 2026-03-01, clutch: 1, laid: 1, note: "=HYPERLINK(\\"file:///x\\"),\\r\\n🐤 '${'ü'.repeat(10_000)}"}\n  - {date: 2026-03-02, laid: 3, lost: {eaten: e1}}\n  - {date: 2026-03-20, heard: "<script>alert(1)</script>"}\n`,
    }),
    on: '2026-05-17',
  },
};

describe.each(Object.entries(rooms))('%s', (title, { journals, on }) => {
  const folder = join(scratch, title.replaceAll(' ', '-'));
  let resources: Resource[] = [];
  let database: DuckDBConnection;

  /** A command's output on the room. */
  function output(run: typeof exportRun | typeof seasonRun, more: object): string {
    const said: string[] = [];
    const stream = { write: (text: string) => void said.push(text), color: false, width: 80 };
    const context = { day: day(on), today: day(on), journals, json: false, arguments: [], options: {} };
    run({ ...context, stdout: stream, stderr: stream, ...more } as never);
    return said.join('');
  }

  async function query(sql: string): Promise<Record<string, unknown>[]> {
    return (await database.runAndReadAll(sql)).getRowObjectsJson();
  }

  beforeAll(async () => {
    output(exportRun, { options: { all: folder } });
    resources = JSON.parse(readFileSync(join(folder, 'datapackage.json'), 'utf8')).resources;
    database = await (await DuckDBInstance.create(':memory:')).connect();
    for (const { name: table, path, schema } of resources) {
      const columns = schema.fields.map((one) => `'${one.name}': '${TYPES[one.type]}'`).join(', ');
      await database.run(
        `CREATE TABLE "${table}" AS SELECT * FROM read_csv('${join(folder, path)}', header = true, auto_detect = false,
         delim = ',', quote = '"', escape = '"', nullstr = '', columns = {${columns}}, max_line_size = 10000000)`,
      );
    }
  });

  it('is a tabular data package', () => {
    isPackage(JSON.parse(readFileSync(join(folder, 'datapackage.json'), 'utf8')));
    expect(isPackage.errors).toBeNull();
    // The profile leaves to the standard's text that a path is relative and leads nowhere above.
    for (const { path } of resources) expect(path).toMatch(/^[a-z]+\.csv$/);
  });

  it('has the columns that it declares, in their order', () => {
    for (const { path, schema } of resources) {
      const [head] = readFileSync(join(folder, path), 'utf8').split('\r\n');
      expect(head).toBe(schema.fields.map((one) => one.name).join(','));
    }
  });

  it('keeps its keys, its words and what is always there', async () => {
    for (const { name: table, schema } of resources) {
      if (schema.primaryKey !== undefined) {
        const key = schema.primaryKey.map((one) => `"${one}"`).join(', ');
        expect(await query(`SELECT ${key} FROM "${table}" GROUP BY ${key} HAVING count(*) > 1`)).toEqual([]);
      }
      for (const { name: column, constraints } of schema.fields) {
        const found = await query(`SELECT DISTINCT "${column}" AS cell FROM "${table}"`);
        const cells = found.map(({ cell }) => cell);
        if (constraints?.required) expect(cells, `${table}.${column}`).not.toContain(null);
        if (constraints?.enum === undefined) continue;
        expect([...constraints.enum, null], `${table}.${column}`).toEqual(expect.arrayContaining(cells));
      }
    }
  });

  it('refers to rows that there are', async () => {
    for (const { name: table, schema } of resources) {
      for (const { fields: column, reference } of schema.foreignKeys ?? []) {
        const { resource, fields: its } = reference;
        const lost = await query(
          `SELECT "${column}" FROM "${table}" WHERE "${column}" NOT IN (SELECT "${its}" FROM "${resource}")`,
        );
        expect(lost, `${table}.${column} → ${resource}.${its}`).toEqual([]);
      }
    }
  });

  it('gives the totals that the season gives', async () => {
    const { totals } = JSON.parse(output(seasonRun, { json: true, arguments: ['all'] }));
    const sum = (causes: Record<string, number>) => Object.values(causes).reduce((all, n) => all + n, 0);
    const [sums] = await query(
      `SELECT count(*) AS clutches, ${['laid', 'fertile', 'clear', 'unknown', 'taken', 'lost', 'openEggs', 'hatched', 'fledged', 'independent', 'died', 'gone', 'openChicks'].map((one) => `coalesce(sum("${one}"), 0)::INTEGER AS "${one}"`).join(', ')} FROM clutches`,
    );
    const { clutches, eggs, chicks } = totals;
    expect({ ...sums, clutches: Number(sums?.clutches) }).toEqual({
      clutches,
      laid: eggs.laid,
      fertile: eggs.fertile,
      clear: eggs.clear,
      unknown: eggs.unknown,
      taken: eggs.taken,
      lost: sum(eggs.lost),
      openEggs: eggs.open,
      hatched: chicks.hatched,
      fledged: chicks.fledged,
      independent: chicks.independent,
      died: sum(chicks.died),
      gone: chicks.gone,
      openChicks: chicks.open,
    });
    const rates = await query(
      `SELECT rate, k::INTEGER AS k, n::INTEGER AS n, share, low, high FROM rates WHERE season = 'all' AND "by" = 'all'`,
    );
    for (const { rate, k, n, share, low, high } of rates) {
      expect({ k, n, rate: share, low, high }).toEqual(
        expect.objectContaining(
          Object.fromEntries(
            Object.entries(totals.rates[rate as string]).filter(([key]) =>
              ['k', 'n', 'rate', 'low', 'high'].includes(key),
            ),
          ),
        ),
      );
    }
    const [{ n: lost } = { n: null }] = await query(
      `SELECT count(*)::INTEGER AS n FROM eggs WHERE fate = 'lost'`,
    );
    expect(lost).toBe(sum(eggs.lost));
  });

  it('holds no cell that a spreadsheet would run', async () => {
    for (const { name: table, schema } of resources) {
      for (const { name: column, type } of schema.fields.filter((one) => one.type === 'string')) {
        const [{ n } = { n: null }] = await query(
          `SELECT count(*)::INTEGER AS n FROM "${table}" WHERE regexp_matches("${column}", '^[=+\\-@\\t\\r\\n]')`,
        );
        expect(n, `${table}.${column} ${type}`).toBe(0);
      }
    }
  });
});

it('a note that is out to harm comes back from the table as it was written', async () => {
  const folder = join(scratch, 'a-room-whose-names-and-notes-are-out-to-harm');
  const { table, problems } = readTable('events.csv', readFileSync(join(folder, 'events.csv'), 'utf8'));
  expect(problems).toEqual([]);
  const cells = table.rows.map((row) =>
    Object.fromEntries(table.headings.map((heading, index) => [heading, row.cells[index]])),
  );
  expect(cells[0]).toMatchObject({
    pair: '-P1',
    note: `=HYPERLINK("file:///x"),\r\n🐤 '${'ü'.repeat(10_000)}`,
  });
  expect(cells.at(-1)).toMatchObject({ key: 'heard', what: '<script>alert(1)</script>' });
});

it('the queries of the manual run in DuckDB, on files as they lie there', async () => {
  const page = readFileSync(join(root, 'src/manual/data-package.md'), 'utf8');
  const section = page.slice(page.indexOf('## In DuckDB'), page.indexOf('## In R'));
  const sql = section
    .split('\n')
    .filter((line) => line.startsWith('    '))
    .join('\n');
  const database = await (await DuckDBInstance.create(':memory:')).connect();
  const queries = sql.split(';').filter((one) => one.trim() !== '');
  expect(queries).toHaveLength(2);
  for (const query of queries) {
    const here = query.replaceAll("'tables/", `'${join(scratch, 'the-example-room')}/`);
    expect((await database.runAndReadAll(here)).getRowObjectsJson().length).toBeGreaterThan(3);
  }
});

it('the published profile refuses what is none: a type that it does not know, nothing to hold', () => {
  const field = { name: 'egg', type: 'string' };
  const resource = {
    profile: 'tabular-data-resource',
    name: 'eggs',
    path: 'eggs.csv',
    schema: { fields: [field] },
  };
  const sound = { profile: 'tabular-data-package', name: 'nestlog', resources: [resource] };
  expect(isPackage(sound)).toBe(true);
  const odd = { ...resource, schema: { fields: [{ ...field, type: 'feather' }] } };
  expect(isPackage({ ...sound, resources: [odd] })).toBe(false);
  expect(isPackage({ profile: 'tabular-data-package' })).toBe(false);
});
