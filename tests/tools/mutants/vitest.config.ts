/**
 * The tests that hunt mutants of one folder: those that mirror it, and beside them mornings that were thought through
 * and the gallery of findings, or for what reckons the figures of outside sources. What starts processes, writes disks
 * or tries thousands of rooms would be run once a mutant, and tells nothing more of these folders.
 */
import { defineConfig } from 'vitest/config';
import { profilesForVite } from '../../../bin/build/profiles.mjs';

const folder = (process.env.NESTLOG_MUTANTS ?? 'src').replace(/\/[^/]*\.ts$/, '');
const mirror = folder.replace(/^src/, 'tests');
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
