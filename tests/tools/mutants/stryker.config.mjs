const folder = process.env.NESTLOG_MUTANTS ?? 'src';
const name = folder.replaceAll('/', '-');

/** @type {import('@stryker-mutator/api/core').PartialStrykerOptions} */
export default {
  testRunner: process.env.NESTLOG_MUTANTS_RUNNER ?? 'resident',
  plugins: ['@stryker-mutator/vitest-runner', './tests/tools/mutants/resident-runner.mjs'],
  vitest: { configFile: 'tests/tools/mutants/vitest.config.ts', related: false },
  mutate: [folder.endsWith('.ts') ? folder : `${folder}/**/*.ts`],
  coverageAnalysis: 'perTest',
  concurrency: 1,
  ignoreStatic: !process.env.NESTLOG_MUTANTS_LOADING,
  // The links of this room lead in circles, which the copy into the sandbox does not survive.
  ignorePatterns: ['.mutants', 'dist', 'tests/findings/file-loop', 'biome.json'],
  tempDirName: `.mutants/${name}-sandbox`,
  // A sample says nothing of what was left out.
  incremental: !(process.env.NESTLOG_MUTANTS_EACH || process.env.NESTLOG_MUTANTS_LOADING),
  incrementalFile: `.mutants/${name}.json`,
  reporters: ['clear-text', 'progress-append-only', 'json'],
  jsonReporter: { fileName: `.mutants/${name}-report.json` },
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  timeoutMS: 30000,
};
