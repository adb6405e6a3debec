/** Parts of the program and of its tests, compiled as the program is. */
import { mkdtempSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import { settings } from '../../bin/build/settings.mjs';

/**
 * Compiles a file in a folder that goes away and calls a function that it exports.
 * @param {string} path relative to the project
 * @param {string} name the function
 * @param {...unknown} words what it is given
 * @returns {Promise<string[]>} the lines that it gives
 */
export async function runCompiled(path, name, ...words) {
  const folder = mkdtempSync(join(tmpdir(), 'nestlog-compiled-'));
  try {
    const outfile = join(folder, 'part.cjs');
    await build({ ...settings, entryPoints: [path], outfile });
    return await createRequire(import.meta.url)(outfile)[name](...words);
  } finally {
    rmSync(folder, { recursive: true });
  }
}
