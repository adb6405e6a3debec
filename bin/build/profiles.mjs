/**
 * The shipped species profiles as data: `import { shippedProfiles } from 'virtual:species-profiles'` gives the
 * files of `src/species/profiles/`, parsed when the program is built, so that a morning does not wait for YAML.
 * The bundle (esbuild) and the tests (vite) take it from this one place.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parse } from 'yaml';

const NAME = 'virtual:species-profiles';
const FOLDER = fileURLToPath(new URL('../../src/species/profiles', import.meta.url));

/**
 * Every profile of a folder, sorted by file name. Scalars stay text: `014` is not fourteen here either.
 * @param {string} folder
 * @returns {{ file: string, data: unknown }[]}
 */
export function readProfiles(folder = FOLDER) {
  const files = readdirSync(folder).filter((file) => file.endsWith('.yaml'));
  return files.sort().map((file) => {
    try {
      return { file, data: parse(readFileSync(join(folder, file), 'utf8'), { schema: 'failsafe' }) };
    } catch (error) {
      throw new Error(`${file} is no readable YAML: ${error instanceof Error ? error.message : error}`);
    }
  });
}

/**
 * A file's names at once, its values when they are asked for: a room keeps a dozen species of more than a hundred.
 * JSON in a string, as engines read that faster than an object literal of the same size.
 */
function source() {
  const profiles = readProfiles().map(({ file, data }) => {
    const { species = '', scientific = '', also = [] } = /** @type {Record<string, unknown>} */ (data);
    const names = JSON.stringify({ species, scientific, also });
    const text = JSON.stringify(JSON.stringify(data));
    return `{ file: ${JSON.stringify(file)}, names: ${names}, get data() { return JSON.parse(${text}); } }`;
  });
  return `export const shippedProfiles = [${profiles.join(',\n')}];`;
}

/** @returns {import('esbuild').Plugin} */
export function profilesForEsbuild() {
  return {
    name: 'species-profiles',
    setup(build) {
      build.onResolve({ filter: new RegExp(`^${NAME}$`) }, () => ({ path: NAME, namespace: 'virtual' }));
      build.onLoad({ filter: /.*/, namespace: 'virtual' }, () => ({ contents: source(), loader: 'js' }));
    },
  };
}

/** @returns {import('vite').Plugin} */
export function profilesForVite() {
  return {
    name: 'species-profiles',
    resolveId: (id) => (id === NAME ? `\0${NAME}` : undefined),
    load(id) {
      if (id !== `\0${NAME}`) return undefined;
      for (const { file } of readProfiles()) this.addWatchFile(join(FOLDER, file));
      return source();
    },
  };
}
