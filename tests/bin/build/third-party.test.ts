import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { root } from '../../../bin/build/settings.mjs';
import { packageFolders, thirdPartyPage } from '../../../bin/build/third-party.mjs';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'nestlog-licences-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

function packageAt(name: string, files: Record<string, string>): string {
  const path = join(folder, name);
  mkdirSync(path);
  for (const [file, text] of Object.entries(files)) writeFileSync(join(path, file), text);
  return path;
}

it('finds the packages of bundled files, scoped and nested ones too, each once', () => {
  const files = [
    'src/cli.ts',
    'virtual:species-profiles',
    'node_modules/zebra/a.js',
    'node_modules/zebra/b/c.js',
    'node_modules/@room/perch/index.js',
    'node_modules/zebra/node_modules/egg/index.js',
  ];
  expect(packageFolders(files)).toEqual([
    'node_modules/@room/perch',
    'node_modules/zebra',
    'node_modules/zebra/node_modules/egg',
  ]);
});

it('gives name, version, licence and the licence’s text', () => {
  const path = packageAt('egg', {
    'package.json': '{"name": "egg", "version": "1.2.3", "license": "ISC"}',
    LICENSE: 'You may sit on it.\r\nBut gently.\r\n',
  });
  expect(thirdPartyPage([path])).toContain(
    '## egg 1.2.3\n\nISC\n\n```text\nYou may sit on it.\nBut gently.\n```\n',
  );
});

it('refuses what carries no licence', () => {
  const path = packageAt('foundling', {
    'package.json': '{"name": "foundling", "version": "0.0.1", "license": "MIT"}',
  });
  expect(() => thirdPartyPage([path])).toThrow('foundling 0.0.1 is bundled but carries no licence');
});

it('has a page that names the packages in use', () => {
  expect(readFileSync(join(root, 'THIRD-PARTY.md'), 'utf8')).toMatch(/^## commander \d/m);
});
