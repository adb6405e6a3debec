/**
 * JSON Schema, draft 2020-12 (https://json-schema.org/draft/2020-12), as checked by ajv: the schemas that editors get
 * are sound, take what the reader takes, and refuse what it refuses. Files are parsed as editors parse them, by YAML
 * 1.2's core schema: `laid: 2` is a number, `paired` in braces is null.
 */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import formats from 'ajv-formats';
import { describe, expect, it } from 'vitest';
import { parseDocument } from 'yaml';
import { root } from '../../bin/build/settings.mjs';
import { kindOf } from '../../src/findings/codes.ts';
import { loadRoom } from '../../src/journal/load.ts';
import { readFile } from '../../src/journal/record.ts';
import { type SchemaKind, schemaKinds } from '../../src/journal/schema-files.ts';
import { schemaText } from '../../src/report/schema/index.ts';
import { dedent } from '../rooms.ts';

// Words for people are in the schemas for editors; types may be given as lists.
const ajv = new Ajv2020({ allErrors: true, strict: true, strictTypes: false, strictRequired: false });
formats.default(ajv);

const validators = Object.fromEntries(
  schemaKinds.map((kind) => [kind, ajv.compile(JSON.parse(schemaText(kind)))]),
) as Record<SchemaKind, ValidateFunction>;

/** What an editor would say of a file: its YAML's errors, else the schema's. */
function editorSays(kind: SchemaKind, text: string): string[] {
  const document = parseDocument(text, { version: '1.2', schema: 'core', logLevel: 'error' });
  if (document.errors.length > 0) return document.errors.map(({ message }) => message);
  const validate = validators[kind];
  return validate(document.toJS()) ? [] : ajv.errorsText(validate.errors, { separator: '\n' }).split('\n');
}

function kindOfFile(path: string): SchemaKind | null {
  if (path.startsWith('pairs/')) return 'pair';
  if (path.startsWith('species/')) return 'species';
  return /^birds\.ya?ml$/.test(path) ? 'birds' : /^nestlog\.ya?ml$/.test(path) ? 'room' : null;
}

const readable = (folder: string) =>
  loadRoom(folder).flatMap((file) => ('text' in file ? { path: file.path, text: file.text } : []));

it.each(schemaKinds)('the schema of a %s file is one of draft 2020-12', (kind) => {
  expect(ajv.validateSchema(JSON.parse(schemaText(kind)))).toBe(true);
});

describe('the example room', () => {
  it.each(readable(join(root, 'journals-example')))('$path is taken', ({ path, text }) => {
    expect(editorSays(kindOfFile(path) as SchemaKind, text)).toEqual([]);
  });
});

/** Errors that need more than one value at a time, a calendar or the text itself: only `nestlog check` can see them. */
const BEYOND = new Set([
  'after-later',
  'early-date',
  'note-swallows',
  'feeding-half',
  'feeding-reversed',
  'sprout-hours',
  'routine-never-ends',
  'profile-absurd',
  'profile-reversed',
  'conflict-mark',
  'empty-file',
  'not-utf8',
  'stray-journal',
  'yaml-feature',
]);

const gallery = join(root, 'tests/findings');
const samples = readdirSync(gallery, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .flatMap(({ name }) => readable(join(gallery, name)).map(({ path, text }) => ({ name, path, text })))
  .filter(({ path }) => kindOfFile(path) !== null)
  .map((sample) => {
    const errors = readFile(sample.path, sample.text).findings.filter((one) => kindOf(one).level === 'error');
    return { ...sample, codes: errors.map(({ code }) => code) };
  });

describe('a broken file is refused', () => {
  const broken = samples.filter(({ codes }) => codes.some((code) => !BEYOND.has(code)));

  it('in more than forty ways', () => {
    expect(broken.length).toBeGreaterThan(40);
  });

  it.each(broken)('$name: $path', ({ path, text }) => {
    expect(editorSays(kindOfFile(path) as SchemaKind, text)).not.toEqual([]);
  });
});

describe('a file that only deserves hints is taken', () => {
  // A note without quotes is read by nestlog, not by YAML; a spelling that nestlog can read is underlined while it is typed.
  const underlined = ['unquoted-note', 'read-as', 'said-yes'];
  const sound = samples.filter(({ name, codes }) => codes.length === 0 && !underlined.includes(name));

  it.each(sound)('$name: $path', ({ path, text }) => {
    expect(editorSays(kindOfFile(path) as SchemaKind, text)).toEqual([]);
  });
});

const journal = (entry: string) =>
  `pair: LW-1\nspecies: lavender waxbill\nlog:\n  - {date: 2026-03-01, ${entry}}\n`;

describe('an entry as it is typed', () => {
  it.each([
    'paired',
    'laid: 2',
    'laid: "2"',
    'laid: ~3',
    'laid: 3+',
    'laid: some',
    'laid: [e1, e2]',
    'candled: {fertile: 0, clear: [e1, e2]}',
    'ringed: {c1: 014, SF-2/1/c1: LW 26 015}',
    'aged: {5: all}',
    'weighed: {c1: 4.5, hen: "9"}',
    'food: {live food: 12}',
    'food: live food',
    'sitting',
    'sitting: off',
    'checked: {eggs: ~2}',
    'paired: {hen: LW-20-11}',
    'after: 18:00, heard',
    'after: 2026-02-28 18:00, hatched: all',
    'site:, clutch: 2, laid: 1',
  ])('{date: 2026-03-01, %s}', (entry) => {
    expect(editorSays('pair', journal(entry))).toEqual([]);
  });

  it.each([
    'laid',
    'laid: 0',
    'laid: -1',
    'laid: 41',
    'laid: 2.5',
    'laid: []',
    'laid: [1, 2]',
    'laid: {e1: 1}',
    'candled: {fertille: 1}',
    'candled: 2',
    'candled: {}',
    'weighed: {c1: heavy}',
    'weighed: {c1: 4,5}',
    'sitting: maybe',
    'checked: {egg: 2}',
    'roosting: {nest}',
    'time: 25:00, heard',
    'clutch: 0, laid: 1',
    'date-of-hatch: 2026-03-01',
  ])('not {date: 2026-03-01, %s}', (entry) => {
    expect(editorSays('pair', journal(entry))).not.toEqual([]);
  });
});

describe('the other files', () => {
  it.each<[SchemaKind, string]>([
    ['birds', 'birds:\n  - {id: LW-19-04, sex: hen, sire: [A-1, A-2], log: [{date: 2026-01-02, arrived}]}\n'],
    ['birds', '# nobody yet\n'],
    ['room', 'season-start: 09-01\nringing: no\nlimits: {quarantine: 30, max-inbreeding: 12.5 %}\n'],
    ['room', 'feeding: {from: 06:00, to: 20:00, every: 90}\nrings: [{mm: 2.3, in-hand: 0}]\n'],
    ['species', 'species: lavender waxbill\nincubation: 11-13\nsitting-from: last\nrestart: -2-5\n'],
    ['species', 'also: [lavender finch]\nfledging: {range: 18, grade: read, source: own room}\nmoult:\n'],
  ])('%s: %s is taken', (kind, text) => {
    expect(editorSays(kind, dedent(text))).toEqual([]);
  });

  it.each<[SchemaKind, string]>([
    ['birds', 'birds:\n  - {species: lavender waxbill}\n'],
    ['birds', 'birds: {id: A-1}\n'],
    ['room', 'season-start: 13-01\n'],
    ['room', 'routines: [{name: calcium}]\n'],
    ['room', 'rings: [{mm: 2.3}]\n'],
    ['species', 'incubation: long\n'],
    ['species', 'live-food: sometimes\n'],
    ['species', 'fledging: {range: 18, grade: guessed}\n'],
    ['pair', 'pair: 12\nlog: []\n'],
    ['pair', 'pair: LW/1\n'],
    ['pair', 'species: lavender waxbill\n'],
  ])('%s: %s is refused', (kind, text) => {
    expect(editorSays(kind, text)).not.toEqual([]);
  });
});

describe('every key', () => {
  /** Every property of a schema, wherever it stands, that is one of a file's own keys. */
  function keysOf(schema: unknown, path: string[] = []): [string, Record<string, unknown>][] {
    if (typeof schema !== 'object' || schema === null) return [];
    return Object.entries(schema).flatMap(([name, under]) => {
      const here = [...path, name];
      const own = path.at(-1) === 'properties' && (path.length === 1 || path.at(-2) === 'items');
      return [
        ...(own ? [[here.join('.'), under] as [string, Record<string, unknown>]] : []),
        ...keysOf(under, here),
      ];
    });
  }

  it.each(schemaKinds)(
    'of a %s file says what it means and gives an example that the schema takes',
    (kind) => {
      const schema = JSON.parse(schemaText(kind));
      const keys = keysOf(schema);
      expect(keys.length).toBeGreaterThan(3);
      for (const [path, property] of keys) {
        expect([path, property.description]).toEqual([path, expect.stringMatching(/\S/)]);
        const validate = ajv.compile({ $defs: schema.$defs, ...property });
        const examples = property.examples as unknown[];
        const taken = examples.map((example) => ({ example, taken: validate(example) }));
        expect([path, taken]).toEqual([path, examples.map((example) => ({ example, taken: true }))]);
        expect(examples.length).toBeGreaterThan(0);
      }
    },
  );
});
