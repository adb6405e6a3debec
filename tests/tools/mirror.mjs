/**
 * Every source file has the test that mirrors it: `src/a/b.ts` in `tests/a/b.test.ts`. Every page kept for a test has that
 * test beside it: `golden/b/…` is asked for by `b.test.ts`, which itself tells what it does not ask for (`tests/golden.ts`).
 */
import { transformSync } from 'esbuild';

/** Folders of same-shaped files, covered by one test that goes through all of them. */
export const tableTested = {
  'src/journal/observations': 'tests/journal/observations.test.ts',
  'src/journal/bird-observations': 'tests/journal/bird-observations.test.ts',
  'src/room/observations': 'tests/room/observations.test.ts',
  'src/findings/codes': 'tests/findings/codes.test.ts',
  'src/rules/ahead/housing': 'tests/rules/ahead/housing.test.ts',
  'src/rules/season/measures': 'tests/rules/season/measures.test.ts',
  'src/report/tables': 'tests/report/tables/rows.test.ts',
  'src/report/terminal/ahead': 'tests/report/terminal/ahead.test.ts',
  'src/report/terminal/feed': 'tests/report/terminal/feed.test.ts',
  'src/report/page/season': 'tests/report/page/season.test.ts',
  'src/report/page/timeline': 'tests/report/page/timeline.test.ts',
  'src/report/terminal/pair': 'tests/report/terminal/pair.test.ts',
  'src/report/terminal/bird': 'tests/report/terminal/bird.test.ts',
  'src/report/account': 'tests/report/account/markdown.test.ts',
  'src/report/pictures': 'tests/report/pictures/picture.test.ts',
  'src/report/page/pedigree': 'tests/report/page/bird.test.ts',
};

/** Files that another test covers. Keep it short. */
export const coveredBy = {
  'src/cli.ts': 'tests/bin/nestlog.test.ts',
  'src/cli/world.ts': 'tests/bin/early.test.ts',
  'src/commands/build.ts': 'tests/bin/early.test.ts',
  'src/commands/index.ts': 'tests/bin/nestlog.test.ts',
  'src/report/page/due-style.ts': 'tests/report/page/due.test.ts',
  'src/report/page/facts.tsx': 'tests/report/page/bird.test.ts',
  'src/report/page/pictures.tsx': 'tests/report/page/pair.test.ts',
  'src/report/page/years.tsx': 'tests/report/page/pair.test.ts',
  'src/rules/discretion/tellable.ts': 'tests/rules/discretion/discretion.test.ts',
  'src/report/page/figure.tsx': 'tests/report/page/document.test.ts',
  'src/report/page/style.ts': 'tests/report/page/document.test.ts',
  'src/report/page/table.tsx': 'tests/report/page/document.test.ts',
  'src/commands/usage-error.ts': 'tests/commands/program.test.ts',
};

/**
 * Source files without a test. One that holds nothing but types needs none.
 * @param {import('./sources.mjs').SourceFile[]} sources
 * @param {Set<string>} tests paths
 * @param {{ folders: Record<string, string>, files: Record<string, string> }} exceptions
 * @returns {import('./sources.mjs').Complaint[]}
 */
export function withoutTest(sources, tests, exceptions = { folders: tableTested, files: coveredBy }) {
  /** @type {import('./sources.mjs').Complaint[]} */
  const complaints = [];
  for (const { path, text } of sources) {
    const folder = path.slice(0, path.lastIndexOf('/'));
    const mirror = path.replace(/^src\//, 'tests/').replace(/\.tsx?$/, '.test.ts');
    const expected = exceptions.files[path] ?? exceptions.folders[folder] ?? mirror;
    if (tests.has(expected) || tests.has(mirror) || isTypesOnly(path, text)) continue;
    complaints.push({ path, line: 1, what: `has no test: ${expected}` });
  }
  return complaints;
}

/**
 * Kept pages whose test is gone, so that nobody would see them become wrong.
 * @param {string[]} pages paths of files in folders called `golden`
 * @param {Set<string>} tests paths
 * @returns {import('./sources.mjs').Complaint[]}
 */
export function unasked(pages, tests) {
  return pages.flatMap((path) => {
    const test = path.replace(/\/golden\/([^/]+).*/, '/$1.test.ts');
    return tests.has(test) ? [] : [{ path, line: 1, what: `is asked for by no test: ${test}` }];
  });
}

/**
 * @param {string} path
 * @param {string} text
 */
function isTypesOnly(path, text) {
  return transformSync(text, { loader: path.endsWith('x') ? 'tsx' : 'ts' }).code.trim() === '';
}
