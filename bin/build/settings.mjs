import { fileURLToPath } from 'node:url';
import { profilesForEsbuild } from './profiles.mjs';

/** The folder of the project, absolute. */
export const root = fileURLToPath(new URL('../..', import.meta.url));

/**
 * How nestlog is compiled for Node: the program, and the parts of it that are measured alone.
 * @satisfies {import('esbuild').BuildOptions}
 */
export const settings = {
  absWorkingDir: root,
  bundle: true,
  platform: 'node',
  target: 'node20.19',
  format: 'cjs',
  minify: true,
  legalComments: 'external',
  charset: 'utf8',
  logLevel: 'warning',
  plugins: [profilesForEsbuild()],
};
