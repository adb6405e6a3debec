// How the launcher loads the bundle: compiled by V8 once, at build time, and not again at every start.
const { readFileSync, writeFileSync } = require('node:fs');
const { wrap } = require('node:module');
const { dirname, join } = require('node:path');
const { Script } = require('node:vm');

/**
 * What the bundle exports. Its first line names the compiled form that belongs to it; where that is missing, damaged or
 * made by another Node, V8 compiles anew and nothing is said.
 * @param {string} bundle absolute
 * @returns {{ main: (words: string[], version: string) => Promise<void> }}
 */
function load(bundle) {
  const source = readFileSync(bundle, 'latin1');
  const cache = join(dirname(bundle), `nestlog-${source.slice(2, source.indexOf('\n'))}.cache`);
  const script = new Script(wrap(source), { filename: bundle, cachedData: compiled(cache) });
  if (process.env.NESTLOG_WRITE_CODE_CACHE) {
    process.once('exit', () => writeFileSync(cache, script.createCachedData()));
  }
  const module = { exports: {} };
  script.runInThisContext().call(module.exports, module.exports, require, module, bundle, dirname(bundle));
  return /** @type {ReturnType<typeof load>} */ (module.exports);
}

/** @param {string} file */
function compiled(file) {
  try {
    return readFileSync(file);
  } catch {
    return undefined;
  }
}

module.exports = load;
