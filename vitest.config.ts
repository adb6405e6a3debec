import { defineConfig } from 'vitest/config';
import { profilesForVite } from './bin/build/profiles.mjs';

const report = process.env.NESTLOG_TEST_REPORT;

export default defineConfig({
  plugins: [profilesForVite()],
  test: {
    include: ['tests/**/*.test.ts'],
    pool: 'threads',
    reporters: report ? ['default', ['json', { outputFile: report }]] : ['default'],
  },
});
