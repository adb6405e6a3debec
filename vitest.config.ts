import { defineConfig } from 'vitest/config';
import { profilesForVite } from './bin/build/profiles.mjs';

const report = process.env.NESTLOG_TEST_REPORT;

export default defineConfig({
  plugins: [profilesForVite()],
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/setup.ts'],
    // Nothing in the core keeps state between tests, so that each file need not load the libraries anew.
    pool: 'threads',
    isolate: false,
    // How long a test may take says nothing of speed, which the benchmark measures; a busy machine is no failure.
    testTimeout: 60_000,
    hookTimeout: 60_000,
    reporters: report ? ['default', ['json', { outputFile: report }]] : ['default'],
  },
});
