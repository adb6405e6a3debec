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
    reporters: report ? ['default', ['json', { outputFile: report }]] : ['default'],
  },
});
