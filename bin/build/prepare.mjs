/**
 * What npm runs after `npm ci` and for `npm install -g .`: the build. The latter links this folder without installing
 * what the build needs, so that is done here first.
 */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

if (!existsSync(`${root}/node_modules/esbuild`)) {
  const words = ['ci', '--ignore-scripts', '--include=dev', '--no-global', '--prefix', root];
  const { status } = spawnSync('npm', words, {
    cwd: root,
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  if (status !== 0)
    throw new Error('What the build needs could not be installed; run `npm ci` in this folder.');
}
await import('./bundle.mjs');
