import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { shippedProfiles } from 'virtual:species-profiles';
import { build } from 'esbuild';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { readProfiles } from '../../../bin/build/profiles.mjs';
import { root, settings } from '../../../bin/build/settings.mjs';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'nestlog-profiles-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

it('gives one profile a file, in the order of the names, all scalars as text', () => {
  writeFileSync(join(folder, 'b.yaml'), 'species: b\nlaying-interval: 01\nlive-food: no\n');
  writeFileSync(join(folder, 'a.yaml'), 'species: a\nalso: [1.50, ~]\n');
  writeFileSync(join(folder, 'notes.txt'), 'not a profile');
  expect(readProfiles(folder)).toEqual([
    { file: 'a.yaml', data: { species: 'a', also: ['1.50', '~'] } },
    { file: 'b.yaml', data: { species: 'b', 'laying-interval': '01', 'live-food': 'no' } },
  ]);
});

it('names the file that is no YAML', () => {
  writeFileSync(join(folder, 'torn.yaml'), 'species: [a\n');
  expect(() => readProfiles(folder)).toThrow(/torn\.yaml is no readable YAML/);
});

it('gives tests and bundle the same data', async () => {
  const { outputFiles } = await build({
    ...settings,
    stdin: { contents: "export * from 'virtual:species-profiles'", resolveDir: root },
    write: false,
    outdir: folder,
  });
  const module: { exports: { shippedProfiles?: unknown } } = { exports: {} };
  new Function('module', outputFiles[0]?.text ?? '')(module);
  expect(shippedProfiles.length).toBeGreaterThan(11);
  // Values are read by a getter, so they are asked for before they are compared.
  const read = (profiles: unknown) =>
    (profiles as typeof shippedProfiles).map(({ file, names, data }) => ({ file, names, data }));
  expect(read(module.exports.shippedProfiles)).toEqual(read(shippedProfiles));
  expect(shippedProfiles.map(({ file, data }) => ({ file, data }))).toEqual(readProfiles());
});
