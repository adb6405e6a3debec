/**
 * The compiled form of the bundle, so that starting the program compiles nothing: what V8 keeps after the program has
 * run once on the example room. Node versions and processors that it does not fit reject it and compile as usual.
 */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { root } from './settings.mjs';

/**
 * Names the bundle by its content, as V8 itself compares lengths only, and lets a first run write its cache.
 * @param {string} bundle
 */
export function writeCodeCache(bundle) {
  const folder = dirname(bundle);
  for (const name of readdirSync(folder).filter((one) => one.endsWith('.cache'))) rmSync(join(folder, name));
  const source = readFileSync(bundle, 'latin1');
  const name = createHash('sha256').update(source).digest('hex').slice(0, 16);
  writeFileSync(bundle, `//${name}\n${source}`, 'latin1');
  const words = ['due', '--journals', 'journals-example', '--date', '2026-05-17', '--no-cache'];
  spawnSync(process.execPath, [join(root, 'bin/nestlog.js'), ...words], {
    cwd: root,
    env: { ...process.env, NESTLOG_WRITE_CODE_CACHE: '1' },
    stdio: 'ignore',
  });
}
