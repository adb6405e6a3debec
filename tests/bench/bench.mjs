/**
 * `npm run bench`, or one part of it (`npm run bench reading`): how long a start takes, and how fast journals are
 * read, as ratios to what they stand on.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import { settings } from '../../bin/build/settings.mjs';
import { measureStart } from './start.mjs';

/** @type {Record<string, () => Promise<void>>} */
const parts = {
  start: async () => {
    await import('../../bin/build/bundle.mjs');
    console.log('start: medians of whole processes, in turn');
    console.log(measureStart().join('\n'));
  },
  // Compiled as the program is, in a folder that goes away.
  reading: async () => {
    const folder = mkdtempSync(join(tmpdir(), 'nestlog-bench-'));
    try {
      const outfile = join(folder, 'reading.cjs');
      await build({ ...settings, entryPoints: ['tests/bench/reading.ts'], outfile });
      console.log('reading: journal text to typed entries, beside bare YAML of the same text');
      console.log(
        createRequire(import.meta.url)(outfile)
          .measureReading()
          .join('\n'),
      );
    } finally {
      rmSync(folder, { recursive: true });
    }
  },
};

const [asked] = process.argv.slice(2);
for (const [name, measure] of Object.entries(parts)) {
  if (asked === undefined || asked === name) await measure();
}
