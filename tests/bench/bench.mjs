/**
 * `npm run bench`, or one part of it (`npm run bench reading`): how long a start takes, how fast
 * journals are read, and how pedigrees grow; as ratios where there is something to stand on.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import { settings } from '../../bin/build/settings.mjs';
import { measureStart } from './start.mjs';

/**
 * A measurement compiled as the program is, in a folder that goes away.
 * @param {string} name
 * @param {string} measure the function that it exports
 * @returns {Promise<string>} what it measured, as lines
 */
async function measured(name, measure) {
  const folder = mkdtempSync(join(tmpdir(), 'nestlog-bench-'));
  try {
    const outfile = join(folder, `${name}.cjs`);
    await build({ ...settings, entryPoints: [`tests/bench/${name}.ts`], outfile });
    return createRequire(import.meta.url)(outfile)
      [measure]()
      .join('\n');
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** @type {Record<string, () => Promise<void>>} */
const parts = {
  start: async () => {
    await import('../../bin/build/bundle.mjs');
    console.log('start: medians of whole processes, in turn');
    console.log(measureStart().join('\n'));
  },
  reading: async () => {
    console.log('reading: journal text to typed entries, beside bare YAML of the same text');
    console.log(await measured('reading', 'measureReading'));
  },
  pedigree: async () => {
    console.log('pedigree: inbreeding of every bird, kinship of the living');
    console.log(await measured('pedigree', 'measurePedigree'));
  },
};

const [asked] = process.argv.slice(2);
for (const [name, measure] of Object.entries(parts)) {
  if (asked === undefined || asked === name) await measure();
}
