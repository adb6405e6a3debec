/**
 * The tests that hunt mutants of one folder: those that mirror it, and beside them mornings that were thought through
 * and the gallery of findings, or for what reckons the figures of outside sources. What starts processes, writes disks
 * or tries thousands of rooms would be run once a mutant, and tells nothing more of these folders.
 */
import { existsSync } from 'node:fs';
import { dirname } from 'node:path';
import { defineConfig } from 'vitest/config';
import { profilesForVite } from '../../../bin/build/profiles.mjs';
import { root } from '../../../bin/build/settings.mjs';

const folder = (process.env.NESTLOG_MUTANTS ?? 'src').replace(/\/[^/]*\.ts$/, '');
/** The tests of some folders stand one further up. */
const mirrorOf = (path: string): string => (existsSync(`${root}/${path}`) ? path : mirrorOf(dirname(path)));
const mirror = mirrorOf(folder.replace(/^src/, 'tests'));
const wider = folder.startsWith('src/statistics') ? ['published/*'] : ['situations/*', 'findings/gallery'];

export default defineConfig({
  plugins: [profilesForVite()],
  test: {
    include: [`${mirror}/**/*`, mirror, ...wider.map((path) => `tests/${path}`)].map(
      (path) => `${path}.test.ts`,
    ),
    // The sample that is left out of the copy, and the count of all samples.
    testNamePattern: /^(?!.*(file-loop|every code has its sample))/,
    setupFiles: ['tests/tools/mutants/setup.ts'],
    pool: 'threads',
    isolate: false,
  },
});
