/**
 * All checks, one line each: `node tests/tools/check.mjs [--without NAME …]`. What fails is shown whole. The exit code
 * is the number of checks that failed.
 */
import { spawnSync } from 'node:child_process';
import { root } from '../../bin/build/settings.mjs';
import { slowExpressions } from './expressions.mjs';
import { wrongImports } from './layers.mjs';
import { unasked, withoutTest } from './mirror.mjs';
import { impurities } from './purity.mjs';
import { sizeHead, sizeLine, tooLong } from './sizes.mjs';
import { filesBelow } from './sources.mjs';

const sources = filesBelow('src', ['.ts', '.tsx']).filter(({ path }) => !path.endsWith('.d.ts'));
const tests = filesBelow('tests', ['.ts', '.mjs']);
const testPaths = new Set(tests.map(({ path }) => path));
const pages = filesBelow('tests', ['.txt'])
  .map(({ path }) => path)
  .filter((path) => path.includes('/golden/'));
const tools = filesBelow('bin', ['.js', '.mjs']);

/**
 * A check made by another program; its output is the complaint.
 * @param {string} command
 */
const program = (command) => () => {
  const { status, stdout, stderr } = spawnSync(command, {
    cwd: root,
    shell: true,
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'pipe'],
    env: { ...process.env, PATH: `${root}/node_modules/.bin:${process.env.PATH}` },
  });
  return status === 0 ? '' : `${stdout}${stderr}`.trim() || `${command}: exit ${status}`;
};

/**
 * A check of our own on the files.
 * @param {() => import('./sources.mjs').Complaint[]} find
 */
const ours = (find) => () =>
  find()
    .map(({ path, line, what }) => `${path}:${line}: ${what}`)
    .join('\n');

/** @type {Record<string, () => string>} each gives its complaints, or nothing */
const checks = {
  types: program('tsc'),
  format: program('biome check --error-on-warnings'),
  unused: program('knip'),
  imports: ours(() => wrongImports(sources)),
  purity: ours(() => impurities(sources)),
  mirror: ours(() => withoutTest(sources, testPaths)),
  golden: ours(() => unasked(pages, testPaths)),
  sizes: ours(() => tooLong([...sources, ...tests, ...tools])),
  expressions: ours(() => slowExpressions(sources)),
  build: program('node bin/build/bundle.mjs'),
  package: program('publint --strict'),
  tests: program('vitest run'),
};

const [option, ...left] = process.argv.slice(2);
const without = new Set(option === '--without' ? left : []);
const failed = Object.entries(checks).filter(([name, check]) => {
  if (without.has(name)) return false;
  const complaints = check();
  console.log(`${complaints === '' ? 'ok    ' : 'FAILED'} ${name}`);
  if (complaints !== '') console.log(complaints.replace(/^/gm, '  '));
  return complaints !== '';
});

console.log(`\n${sizeHead}\n${sizeLine('src', sources)}\n${sizeLine('tests', tests)}`);
process.exitCode = failed.length;
