/**
 * The tests that hunt mutants of one folder: those that mirror it, and those that speak of whole mornings and of
 * outside sources. What starts processes, writes disks or tries thousands of rooms would be run once a mutant, and
 * tells nothing more of these folders.
 */
import { defineConfig } from 'vitest/config';
import { profilesForVite } from '../../../bin/build/profiles.mjs';

const folder = process.env.NESTLOG_MUTANTS ?? 'src';

export default defineConfig({
  plugins: [profilesForVite()],
  test: {
    include: [
      folder.replace(/^src/, 'tests').concat('/**/*.test.ts'),
      'tests/{situations,published}/*.test.ts',
    ],
    exclude: ['tests/published/{json-schema,csv-rfc4180}.test.ts'],
    setupFiles: ['tests/tools/mutants/setup.ts'],
    pool: 'threads',
    isolate: false,
  },
});
