/**
 * `npm run mutants -- FOLDER [option of Stryker …]`: changes the code of a folder below `src`, a spot at a time, and
 * counts the changes that no test tells. A folder takes minutes. What is left over is printed, and kept in `.mutants/`,
 * so that the next run tries only what has changed; `--force` tries all anew.
 */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { root } from '../../../bin/build/settings.mjs';

const [folder = '', ...options] = process.argv.slice(2);
if (!/^src(\/|$)/.test(folder) || !existsSync(`${root}/${folder}`)) {
  console.error('Which folder? For example: npm run mutants -- src/statistics');
  process.exit(2);
}
const { status } = spawnSync(
  `${root}/node_modules/.bin/stryker`,
  ['run', 'tests/tools/mutants/stryker.config.mjs', ...options],
  { cwd: root, stdio: 'inherit', env: { ...process.env, NESTLOG_MUTANTS: folder.replace(/\/$/, '') } },
);
process.exitCode = status ?? 1;
